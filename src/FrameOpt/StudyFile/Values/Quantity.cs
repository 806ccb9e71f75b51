using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.StudyFile.Values;

/// <summary>A number with its unit as typed.</summary>
/// <param name="Value">In the typed unit; NaN stands for one already reported as a mistake.</param>
/// <param name="Digits">The number as typed.</param>
/// <param name="Unit">The typed unit.</param>
internal sealed record Quantity(double Value, string Digits, UnitSpelling Unit)
{
    /// <summary>In the base unit of its dimension.</summary>
    public double Base => Unit.ToBase(Value);

    /// <summary>Reads one value, or reports why not and gives null.</summary>
    /// <param name="node">Where it stands.</param>
    /// <param name="name">What it is, for the message: machine.propeller.diameter.</param>
    /// <param name="example">A line that would be right.</param>
    /// <param name="wanted">Its dimension.</param>
    /// <param name="bound">Where it makes sense.</param>
    /// <param name="findings">Takes the mistake.</param>
    public static Quantity? Read(Node node, string name, string example, Dimension wanted, Bound bound, Findings findings)
    {
        var forExample = $"Write for example `{example}`.";
        if (node is not Node.Scalar scalar)
        {
            findings.Mistake(node, $"{name} wants one value: {wanted.Name}.", forExample);
            return null;
        }

        var parsed = NumberText.Parse(scalar.Text);
        if (parsed.What is { } what)
        {
            findings.Mistake(node, what, parsed.Mend.Length > 0 ? parsed.Mend : $"{name} wants {wanted.Name}: write for example `{example}`.");
            return null;
        }

        if (wanted.Spelled(parsed.Unit) is not { } unit)
        {
            findings.Mistake(node, WrongUnit(scalar.Text.Trim(), parsed.Unit, name, wanted), UnitMend(parsed, wanted, forExample));
            return null;
        }

        var quantity = new Quantity(parsed.Value, parsed.Digits, unit);
        if (bound.Holds(quantity.Base))
            return quantity;
        findings.Mistake(node, $"{name} must be {bound.Words}.", $"Check the sign and the unit. {forExample}");
        return null;
    }

    private static string WrongUnit(string text, string unit, string name, Dimension wanted)
    {
        if (unit.Length == 0)
            return $"{text} has no unit: {name} wants {wanted.Name}.";
        var other = Dimension.All.FirstOrDefault(dimension => dimension.Spelled(unit) is not null);
        if (wanted == Dimension.Number)
            return $"{name} wants a plain number, without a unit.";
        return other is null
            ? $"The unit `{unit}` is not known: {name} wants {wanted.Name}."
            : $"{text} is {other.Name}; {name} wants {wanted.Name}.";
    }

    private static string UnitMend(NumberText.Parsed parsed, Dimension wanted, string forExample) => wanted.SpellingsInWords.Length == 0
        ? $"Write {parsed.Digits}."
        : $"Its units are written {wanted.SpellingsInWords}. {forExample}";
}
