using System.Text.Json;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Compare;

/// <summary>A part of a run.json that knows its place in the file, so that errors can name it. Every text is made safe for screens
/// and files.</summary>
/// <param name="Element">The part.</param>
/// <param name="Path">From the top: "study > machine > propeller".</param>
internal sealed record RunJsonElement(JsonElement Element, string Path)
{
    private const int MaxTextLength = 400;

    /// <summary>No figure of a run is as large; in another unit it is still a number.</summary>
    private const double Largest = 1e30;

    public RunJsonElement this[string name] => Element.ValueKind == JsonValueKind.Object && Element.TryGetProperty(name, out var part)
        ? new RunJsonElement(part, Path.Length > 0 ? $"{Path} > {name}" : name)
        : throw new InvalidRunFileException(Path, $"{name} is missing");

    public bool Has(string name) => Element.ValueKind == JsonValueKind.Object && Element.TryGetProperty(name, out var part)
        && part.ValueKind != JsonValueKind.Null;

    public string Text => Element.ValueKind == JsonValueKind.String ? SingleLine(Element.GetString()!)
        : throw new InvalidRunFileException(Path, "text is expected");

    /// <summary>A finite number.</summary>
    public double Number => NumberOrNaN is var number && double.IsFinite(number) ? number
        : throw new InvalidRunFileException(Path, "a number is expected");

    /// <summary>A number, or NaN where the file says null.</summary>
    public double NumberOrNaN => Element.ValueKind == JsonValueKind.Null ? double.NaN
        : Element.ValueKind == JsonValueKind.Number && Element.TryGetDouble(out var number) && Math.Abs(number) <= Largest ? number
        : throw new InvalidRunFileException(Path, "a number is expected");

    public bool Boolean => Element.ValueKind is JsonValueKind.True or JsonValueKind.False ? Element.GetBoolean()
        : throw new InvalidRunFileException(Path, "true or false is expected");

    /// <summary>The value of {value, unit}, in the unit that run.json writes there.</summary>
    /// <param name="unit">Any other unit means that the file is damaged.</param>
    public double Quantity(string unit) => this["unit"].Text == unit ? this["value"].Number
        : throw new InvalidRunFileException(Path, $"the unit {unit} is expected");

    public IReadOnlyList<RunJsonElement> Items => Element.ValueKind == JsonValueKind.Array
        ? [.. Element.EnumerateArray().Select((item, i) => new RunJsonElement(item, $"{Path} > item {i + 1}"))]
        : throw new InvalidRunFileException(Path, "a list is expected");

    /// <summary>One item of a list, from 0.</summary>
    public RunJsonElement ItemAt(int index) => Element.ValueKind == JsonValueKind.Array && index < Element.GetArrayLength()
        ? new RunJsonElement(Element[index], $"{Path} > item {index + 1}")
        : throw new InvalidRunFileException(Path, "a list is expected");

    public IReadOnlyList<(string Name, RunJsonElement Part)> Properties => Element.ValueKind == JsonValueKind.Object
        ? [.. Element.EnumerateObject().Select(member => (SingleLine(member.Name),
            new RunJsonElement(member.Value, $"{Path} > {SingleLine(member.Name)}")))]
        : throw new InvalidRunFileException(Path, "an object is expected");

    /// <summary>True when it has more keys and values, at any depth.</summary>
    public bool Exceeds(int most)
    {
        var open = new Stack<JsonElement>([Element]);
        for (var seen = 0; open.TryPop(out var part); seen++)
        {
            if (seen > most)
                return true;
            if (part.ValueKind == JsonValueKind.Array)
            {
                foreach (var item in part.EnumerateArray().Take(most + 1))
                    open.Push(item);
            }
            else if (part.ValueKind == JsonValueKind.Object)
            {
                foreach (var member in part.EnumerateObject().Take(most + 1))
                    open.Push(member.Value);
            }
        }

        return false;
    }

    /// <summary>The text in one line, without control characters, shortened.</summary>
    public static string SingleLine(string text) => TextTruncation.Truncate(text.Replace('\t', ' '), MaxTextLength);
}

/// <summary>Something in a run.json is not as a run writes it. Caught by the reader of the file, which turns it into a sentence for the
/// user.</summary>
internal sealed class InvalidRunFileException(string where, string what)
    : Exception($"at {(where.Length > 0 ? where : "its beginning")}: {what}");
