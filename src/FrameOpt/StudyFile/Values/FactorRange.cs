using System.Globalization;

namespace FrameOpt.StudyFile.Values;

/// <summary>A range of levels in the unit the user typed first, in decimal arithmetic: 380 mm and twelve steps of 5 mm are 440 mm
/// exactly.</summary>
internal sealed record FactorRange(decimal From, decimal To, decimal Step, UnitSpelling Unit)
{
    // Only a change of unit within a range (deg and rad) leaves a remainder this small.
    private const decimal Tolerance = 1e-9m;

    /// <summary>The range in the unit of <paramref name="from"/>, or null when a number has more digits than decimals hold.</summary>
    public static FactorRange? Of(Quantity from, Quantity to, Quantity step)
    {
        if (InUnit(from, from.Unit) is { } first && InUnit(to, from.Unit) is { } last && InUnit(step, from.Unit) is { } size && size > 0)
            return new FactorRange(first, last, size, from.Unit);
        return null;
    }

    /// <summary>Number of steps between from and to; not an integer when the step does not fit.</summary>
    public double Steps => (double)(To - From) / (double)Step;

    private long WholeSteps => (long)Math.Round(Steps);

    public bool Fits => WholeSteps >= 1 && Math.Abs(From + WholeSteps * Step - To) <= Tolerance * (To - From);

    /// <summary>Every level in SI, each exactly as its decimal text would be read.</summary>
    public double[] LevelsSi() => [.. Enumerable.Range(0, (int)WholeSteps + 1)
        .Select(i => Unit.ToBase(ToDouble(i == WholeSteps ? To : From + i * Step)))];

    /// <summary>So many levels from the first, in the unit of the range.</summary>
    public IReadOnlyList<Quantity> Levels(int count) => [.. Enumerable.Range(0, count)
        .Select(i => From + i * Step).Select(level => new Quantity(ToDouble(level), level.ToString(CultureInfo.InvariantCulture), Unit))];

    /// <summary>The nearest end that fits the step, and the nearest round step that fits the range.</summary>
    public string Suggestion()
    {
        var end = From + Math.Max(1, Math.Round((To - From) / Step)) * Step;
        var offer = $"Write `to: {Text(end)}`";
        return RoundStep() is { } step ? $"{offer}, or `step: {Text(step)}`." : $"{offer}.";
    }

    private decimal? RoundStep()
    {
        var most = (int)Math.Min(10_000, 2 * Steps + 2);
        return Enumerable.Range(1, most)
            .Select(count => (To - From) / count)
            .Where(step => decimal.Round(step, 2) == step)
            .OrderBy(step => Math.Abs(step - Step))
            .Select(step => (decimal?)step)
            .FirstOrDefault();
    }

    private string Text(decimal value) => FormattableString.Invariant($"{value:0.########} {Unit.Text}");

    private static double ToDouble(decimal value) =>
        double.Parse(value.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static decimal? InUnit(Quantity quantity, UnitSpelling unit)
    {
        if (!decimal.TryParse(quantity.Digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
            return null;
        return quantity.Unit == unit ? value : value * (decimal)(quantity.Unit.ToBase(1) / unit.ToBase(1));
    }
}
