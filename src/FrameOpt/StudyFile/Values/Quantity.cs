using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.StudyFile.Values;

/// <summary>A number with its unit as typed.</summary>
/// <param name="Value">In the typed unit; NaN stands for one already reported as an error.</param>
/// <param name="Digits">The number as typed.</param>
/// <param name="Unit">The typed unit.</param>
internal sealed record Quantity(double Value, string Digits, UnitSpelling Unit)
{
    /// <summary>No quantity of a frame is larger or closer to 0 in any unit; products of such numbers stay finite.</summary>
    private const double Largest = 1e12;
    private const double Smallest = 1e-12;

    /// <summary>In the base unit of its dimension.</summary>
    public double Base => Unit.ToBase(Value);

    /// <summary>Reads one value, or reports why not and gives null.</summary>
    /// <param name="node">The node.</param>
    /// <param name="name">Its path, for the message: machine.propeller.diameter.</param>
    /// <param name="dimension">Its dimension.</param>
    /// <param name="bound">Allowed range.</param>
    /// <param name="diagnostics">Takes the error.</param>
    public static Quantity? Read(Node node, string name, Dimension dimension, AllowedRange bound, DiagnosticBag diagnostics)
    {
        var fix = $"Write {dimension.Wanted}.";
        if (node is not Node.Scalar scalar)
        {
            // A group that had nothing but a reason.
            diagnostics.Add(node, $"{name} wants one value: {dimension.Name}.", node is Node.Map { Entries.Count: 0 }
                ? $"Write under `value`, beside the reason, {dimension.Wanted}." : fix);
            return null;
        }

        var parsed = NumberText.Parse(scalar.Text);
        if (parsed.Message is { } what)
        {
            diagnostics.Add(node, what, parsed.Fix.Length > 0 ? parsed.Fix : $"For {name} write {dimension.Wanted}.");
            return null;
        }

        if (Math.Abs(parsed.Value) is > Largest or (> 0 and < Smallest))
        {
            diagnostics.Add(node, Math.Abs(parsed.Value) > 1 ? "This number is too large." : "This number is too close to 0.",
                $"Check the exponent. {fix}");
            return null;
        }

        if (dimension.FindUnit(parsed.Unit) is not { } unit)
        {
            diagnostics.Add(node, WrongUnit(VisibleText.Quoted(scalar.Text.Trim()), parsed.Unit, name, dimension),
                dimension.SpellingList.Length == 0 ? $"Write {parsed.Digits}." : fix);
            return null;
        }

        var quantity = new Quantity(parsed.Value, parsed.Digits, unit);
        if (bound.Contains(quantity.Base))
            return quantity;
        diagnostics.Add(node, $"{name} must be {bound.Description}.", "Check the sign and the unit.");
        return null;
    }

    private static string WrongUnit(string text, string unit, string name, Dimension dimension)
    {
        if (unit.Length == 0)
            return $"{text} has no unit: {name} wants {dimension.Name}.";
        var other = Dimension.All.FirstOrDefault(dimension => dimension.FindUnit(unit) is not null);
        if (dimension == Dimension.Number)
            return $"{name} wants a plain number, without a unit.";
        return other is null
            ? $"The unit `{unit}` is not known: {name} wants {dimension.Name}."
            : $"{text} is {other.Name}; {name} wants {dimension.Name}.";
    }
}

/// <summary>Allowed range of a quantity, in the base unit of its dimension; values outside it indicate a wrong sign or unit.</summary>
/// <param name="Low">Lower end.</param>
/// <param name="LowAllowed">True when the lower end itself is allowed.</param>
/// <param name="High">Upper end, allowed.</param>
/// <param name="Description">What must hold: "above 0 and at most 3 m".</param>
internal sealed record AllowedRange(double Low, bool LowAllowed, double High, string Description)
{
    /// <summary>Any number.</summary>
    public static readonly AllowedRange None = new(double.NegativeInfinity, true, double.PositiveInfinity, "any number");

    /// <summary>At least 0.</summary>
    public static readonly AllowedRange NonNegative = new(0, true, double.PositiveInfinity, "0 or more");

    /// <summary>A weight: 0, or of a size at which sums and shares of weights stay exact.</summary>
    public static readonly AllowedRange Weight = NonNegativeUpTo(1_000_000, "1000000");

    /// <summary>Greater than 0.</summary>
    public static AllowedRange PositiveUpTo(double high, string highText) => new(0, false, high, $"above 0 and at most {highText}");

    /// <summary>At least 0.</summary>
    public static AllowedRange NonNegativeUpTo(double high, string highText) => new(0, true, high, $"from 0 to {highText}");

    /// <summary>Symmetric about 0.</summary>
    public static AllowedRange Within(double high, string highText) => new(-high, true, high, $"between -{highText} and {highText}");

    /// <summary>Between two ends.</summary>
    public static AllowedRange Between(double low, double high, string lowText, string highText) =>
        new(low, true, high, $"between {lowText} and {highText}");

    public bool Contains(double value) => (LowAllowed ? value >= Low : value > Low) && value <= High;
}

/// <summary>Allowed air densities.</summary>
internal static class AirDensity
{
    /// <summary>From about 11 km of the standard atmosphere to a very cold day at sea level.</summary>
    public static readonly AllowedRange AllowedRange = Values.AllowedRange.Between(0.3, 1.6, "0.3 kg/m³", "1.6 kg/m³");
}
