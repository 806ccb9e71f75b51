using System.Text;
using System.Text.Json;
using FrameOpt.Reports.Answer;

namespace FrameOpt.Web.Work;

/// <summary>The answer of a run on its way from the worker to the page.</summary>
public static class AnswerJson
{
    /// <summary>As text.</summary>
    public static string Write(RunAnswer answer, IEnumerable<string> pictures)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartArray();
            json.WriteStringValue(answer.Title);
            json.WriteStringValue(answer.Question);
            json.WriteStringValue(answer.Headline);
            json.WriteBooleanValue(answer.IsWarning);
            Texts(json, pictures);
            foreach (var section in answer.Sections)
            {
                json.WriteStartArray();
                json.WriteStringValue(section.Title);
                Texts(json, section.Lines);
                if (section.Table is { } table)
                    foreach (var row in table.Rows.Prepend(table.Headers))
                        Texts(json, row);
                json.WriteEndArray();
            }

            json.WriteEndArray();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>Back from text.</summary>
    public static (RunAnswer Answer, IReadOnlyList<string> Pictures) Read(string text)
    {
        using var json = JsonDocument.Parse(text);
        var parts = json.RootElement.EnumerateArray().ToList();
        return (new RunAnswer(parts[0].GetString()!, parts[1].GetString()!, parts[2].GetString()!, parts[3].GetBoolean(),
            [.. parts.Skip(5).Select(Section)]), Texts(parts[4]));
    }

    private static AnswerSection Section(JsonElement part)
    {
        var pieces = part.EnumerateArray().ToList();
        return new AnswerSection(pieces[0].GetString()!, Texts(pieces[1]),
            pieces.Count == 2 ? null : new AnswerTable(Texts(pieces[2]), [.. pieces.Skip(3).Select(Texts)]));
    }

    private static void Texts(Utf8JsonWriter json, IEnumerable<string> texts)
    {
        json.WriteStartArray();
        foreach (var text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }

    private static IReadOnlyList<string> Texts(JsonElement part) => [.. part.EnumerateArray().Select(one => one.GetString()!)];
}
