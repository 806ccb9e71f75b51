using System.Text.Json;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Compare;

/// <summary>A part of a run.json that knows where it stands, so that what is wrong with it can be told. Every text is made fit for screens and files.</summary>
/// <param name="Element">The part.</param>
/// <param name="Where">From the top: "study > machine > propeller".</param>
internal sealed record RunPart(JsonElement Element, string Where)
{
    private const int LongestText = 400;

    public RunPart this[string name] => Element.ValueKind == JsonValueKind.Object && Element.TryGetProperty(name, out var part)
        ? new RunPart(part, Where.Length > 0 ? $"{Where} > {name}" : name)
        : throw new DamagedRunException(Where, $"{name} is missing");

    public bool Holds(string name) => Element.ValueKind == JsonValueKind.Object && Element.TryGetProperty(name, out var part) && part.ValueKind != JsonValueKind.Null;

    public string Text => Element.ValueKind == JsonValueKind.String ? Cleaned(Element.GetString()!) : throw new DamagedRunException(Where, "a text is wanted");

    /// <summary>A finite number.</summary>
    public double Number => NumberOrNothing is var number && double.IsFinite(number) ? number : throw new DamagedRunException(Where, "a number is wanted");

    /// <summary>A number, or NaN where the file says null.</summary>
    public double NumberOrNothing => Element.ValueKind == JsonValueKind.Null ? double.NaN
        : Element.ValueKind == JsonValueKind.Number && Element.TryGetDouble(out var number) && double.IsFinite(number) ? number
        : throw new DamagedRunException(Where, "a number is wanted");

    public bool Flag => Element.ValueKind is JsonValueKind.True or JsonValueKind.False ? Element.GetBoolean() : throw new DamagedRunException(Where, "true or false is wanted");

    /// <summary>The value of {value, unit}, in the unit that run.json writes there.</summary>
    /// <param name="unit">Another is damage: a figure must never be taken for what it is not.</param>
    public double In(string unit) => this["unit"].Text == unit ? this["value"].Number : throw new DamagedRunException(Where, $"the unit {unit} is wanted");

    public IReadOnlyList<RunPart> Items => Element.ValueKind == JsonValueKind.Array
        ? [.. Element.EnumerateArray().Select((item, i) => new RunPart(item, $"{Where} > item {i + 1}"))]
        : throw new DamagedRunException(Where, "a list is wanted");

    public IReadOnlyList<(string Name, RunPart Part)> Members => Element.ValueKind == JsonValueKind.Object
        ? [.. Element.EnumerateObject().Select(member => (Cleaned(member.Name), new RunPart(member.Value, $"{Where} > {Cleaned(member.Name)}")))]
        : throw new DamagedRunException(Where, "names with values are wanted");

    /// <summary>In one line, without control characters, of a bearable length.</summary>
    public static string Cleaned(string text) => ChartText.Short(text.Replace('\t', ' '), LongestText);
}

/// <summary>Something in a run.json is not as a run writes it. Never leaves the reading of the file: it becomes a sentence for the user.</summary>
internal sealed class DamagedRunException(string where, string what) : Exception($"at {(where.Length > 0 ? where : "its beginning")}: {what}");
