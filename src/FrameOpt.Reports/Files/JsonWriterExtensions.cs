using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Files;

/// <summary>How every JSON file is written: plain decimal numbers, null for what is not finite, units beside values.</summary>
internal static class JsonWriterExtensions
{
    public static Utf8JsonWriter Writer(Stream stream) => new(stream, new JsonWriterOptions
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
    });

    /// <summary>What a result was made with and from.</summary>
    public static void WriteOrigin(this Utf8JsonWriter json, RunInfo info, Study study)
    {
        json.WriteString("tool", "FrameOpt");
        json.WriteString("version", info.ToolVersion);
        json.WriteString("study_file", info.StudyFileName);
        json.WriteString("study_sha256", study.Hash);
    }

    public static void WriteDecimal(this Utf8JsonWriter json, double value) =>
        json.WriteRawValue(Number(value));

    public static void WriteDecimal(this Utf8JsonWriter json, string name, double value)
    {
        json.WritePropertyName(name);
        json.WriteDecimal(value);
    }

    /// <summary>"name": {"value": 3.7, "unit": "N·m"}.</summary>
    public static void WriteQuantity(this Utf8JsonWriter json, string name, double value, string unit)
    {
        json.WriteStartObject(name);
        json.WriteDecimal("value", value);
        json.WriteString("unit", unit);
        json.WriteEndObject();
    }

    /// <summary>An object or, where there is nothing to say, null.</summary>
    public static void WriteOptional<T>(this Utf8JsonWriter json, string name, T? value, Action<T> write)
        where T : class
    {
        json.WritePropertyName(name);
        if (value is null)
            json.WriteNullValue();
        else
            write(value);
    }

    public static void WriteStrings(this Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }

    /// <summary>A list of objects.</summary>
    public static void WriteObjects<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> writeMembers)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            writeMembers(item);
            json.WriteEndObject();
            json.PassOn();
        }

        json.WriteEndArray();
    }

    /// <summary>A table of numbers: name and unit of each column, then the rows, one on a line, since thousands of rows would drown in
    /// repeated names and units.</summary>
    public static void WriteTable(this Utf8JsonWriter json, string name, Table table)
    {
        json.WriteStartObject(name);
        json.WriteObjects("columns", table.Columns, column =>
        {
            json.WriteString("name", column.Name);
            json.WriteString("unit", column.Unit);
        });
        json.WriteStartArray("rows");
        var line = new StringBuilder();
        for (var row = 0; row < table.RowCount; row++)
        {
            line.Clear().Append('[');
            foreach (var column in table.Columns)
                line.Append(line.Length > 1 ? "," : "").Append(Number((double)column.Value(row)));
            json.WriteRawValue(line.Append(']').ToString());
            json.PassOn();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>Gives the stream what is written so far; the writer alone would keep all of it to the end.</summary>
    private static void PassOn(this Utf8JsonWriter json)
    {
        if (json.BytesPending > 1 << 16)
            json.Flush();
    }

    private static string Number(double value) => double.IsFinite(value) ? PlainNumber.Text(value) : "null";
}
