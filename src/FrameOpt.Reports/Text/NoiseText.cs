using System.Globalization;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Reports.Text;

/// <summary>Deviations and shares in words.</summary>
public static class NoiseText
{
    /// <summary>A deviation with its sign and unit: "+12.8 mm", "-5.0 %".</summary>
    public static string Deviation(NoiseSource source, double deviation)
    {
        var (size, unit, digits) = source.Unit switch
        {
            NoiseUnit.Length => (1000 * deviation, " mm", 1),
            NoiseUnit.Angle => (180 / Math.PI * deviation, " deg", 1),
            NoiseUnit.Share => (100 * deviation, " %", 1),
            NoiseUnit.Temperature => (deviation, " K", 0),
            _ => (deviation, "", 2),
        };
        var rounded = Math.Round(size, digits) + 0.0;
        return (rounded > 0 ? "+" : "") + rounded.ToString("F" + digits, CultureInfo.InvariantCulture) + unit;
    }

    /// <summary>"94 of 100 cases".</summary>
    public static string InCases(Estimate share) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Round(100 * share.Value):0} of 100 cases");
}
