using System.Globalization;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Reports.Text;

/// <summary>What is uncertain, and how sure an answer is, in words.</summary>
public static class NoiseText
{
    /// <summary>The setting of a study that says nothing of it.</summary>
    public const string Usual = "the usual spreads (docs/noise.md)";

    /// <summary>Ends further out than so many standard deviations cut nothing off that a reader would see.</summary>
    private const double SeenDeviations = 5;

    /// <summary>A deviation with its way: "12.8 mm to the left", "5.0 % more".</summary>
    public static string Deviation(NoiseSource source, double deviation)
    {
        var size = Size(source, Math.Abs(deviation));
        return size == Size(source, 0) ? "no deviation" : $"{size} {(deviation > 0 ? source.More : source.Less)}";
    }

    /// <summary>Both ends of where a number lies: "12.8 mm to the left | to the right".</summary>
    public static string Ends(NoiseSource source, double low, double high) =>
        low < 0 && high > 0 && Size(source, -low) == Size(source, high) ? $"{Deviation(source, low)} | {source.More}"
            : $"{Deviation(source, low)} | {Deviation(source, high)}";

    /// <summary>A spread: "normal, standard deviation 10.0 mm".</summary>
    public static string Words(NoiseSource source, Spread spread) => spread switch
    {
        Spread.Normal normal => $"normal, standard deviation {Size(source, normal.StandardDeviation)}{Ends(source, normal)}",
        Spread.Uniform uniform => $"uniform from {Deviation(source, uniform.From)} to {Deviation(source, uniform.To)}",
        Spread.Triangle triangle => $"triangle from {Deviation(source, triangle.From)} over {Deviation(source, triangle.Peak)} "
            + $"to {Deviation(source, triangle.To)}",
        Spread.Table table => $"{NumberFormat.Count(table.Deviations.Count, "measured deviation")}",
        _ => throw new ArgumentOutOfRangeException(nameof(spread)),
    };

    /// <summary>A setting: what in it is not usual.</summary>
    public static string Setting(NoiseSetting setting)
    {
        if (setting.Sources.Count == 0)
            return "none: every number is taken as exact";
        var own = setting.Sources.Where(pair => pair.Spread != pair.Source.Usual || !NoiseSource.All.Contains(pair.Source))
            .Select(pair => $"{pair.Source.Title} {Words(pair.Source, pair.Spread)}");
        var exact = NoiseSource.All.Except(setting.Sources.Select(pair => pair.Source)).Select(source => $"{source.Title} exact");
        var together = setting.Correlations.Select(pair => $"{pair.First.Title} and {pair.Second.Title} with a rank correlation of "
            + NumberFormat.SignificantDigits(pair.Rank, 3));
        return string.Join("; ", [Usual, .. own, .. exact, .. together]);
    }

    /// <summary>"94 of 100 cases"; all and none only where it is so.</summary>
    public static string InCases(double share) => $"{OfHundred(share)} cases";

    /// <summary>"94 of 100".</summary>
    public static string OfHundred(double share) => share switch
    {
        > 0 and < 0.005 => "fewer than 1 of 100",
        < 1 and >= 0.995 => "more than 99 of 100",
        _ => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(100 * share):0} of 100"),
    };

    private static string Ends(NoiseSource source, Spread.Normal normal)
    {
        var seen = SeenDeviations * normal.StandardDeviation;
        return -normal.From > seen && normal.To > seen ? ""
            : $", from {Deviation(source, normal.From)} to {Deviation(source, normal.To)}";
    }

    /// <summary>The size of a deviation: "12.8 mm", "5.0 %".</summary>
    public static string Size(NoiseSource source, double size)
    {
        var (value, format, unit) = source.Unit switch
        {
            NoiseUnit.Length => (1000 * size, "0.0", " mm"),
            NoiseUnit.Angle => (180 / Math.PI * size, "0.0", " deg"),
            NoiseUnit.Share => (100 * size, "0.0", " %"),
            NoiseUnit.Temperature => (size, "0", " K"),
            _ => (size, "0.00", ""),
        };
        return value.ToString(format, CultureInfo.InvariantCulture) + unit;
    }
}
