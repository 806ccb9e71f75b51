using System.Globalization;

namespace FrameOpt.Reports.Graphics;

/// <summary>An axis of a plot, its ends at round figures.</summary>
/// <param name="Title">With its unit.</param>
/// <param name="Note">A second line under the title; may be empty.</param>
/// <param name="From">Lower end.</param>
/// <param name="To">Upper end, above the lower.</param>
/// <param name="Step">From tick to tick: 1, 2 or 5 times a power of ten.</param>
internal sealed record PlotAxis(string Title, string Note, double From, double To, double Step)
{
    /// <summary>The axis that holds some values.</summary>
    /// <param name="title">With its unit.</param>
    /// <param name="values">Those that are no numbers are left out.</param>
    /// <param name="note">A second line.</param>
    /// <param name="steps">About so many.</param>
    public static PlotAxis Spanning(string title, IEnumerable<double> values, string note = "", int steps = 5)
    {
        var finite = values.Where(double.IsFinite).ToList();
        var (low, high) = finite.Count == 0 ? (0.0, 1.0) : (finite.Min(), finite.Max());
        if (high - low <= 1e-9 * Math.Max(1, Math.Abs(high)))
            (low, high) = (low - 0.5, high + 0.5);
        var step = Round((high - low) / steps);
        return new PlotAxis(title, note, step * Math.Floor(low / step), step * Math.Ceiling(high / step), step);
    }

    /// <summary>Where figures stand.</summary>
    public IEnumerable<double> Ticks => Enumerable.Range(0, (int)Math.Round((To - From) / Step) + 1).Select(i => From + i * Step);

    /// <summary>The figure of a tick.</summary>
    public string Text(double tick)
    {
        var decimals = Math.Max(0, (int)Math.Ceiling(-Math.Log10(Step) - 1e-9));
        return (Math.Round(tick, Math.Min(decimals, 15)) + 0.0).ToString("N" + decimals, CultureInfo.InvariantCulture);
    }

    private static double Round(double step)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(step)));
        var digit = step / power;
        return power * (digit <= 1 ? 1 : digit <= 2 ? 2 : digit <= 5 ? 5 : 10);
    }
}
