using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Reports.ProductLine;

/// <summary>How many pieces a geometry helps: those that would notice if it were not made. Less than what an error of building changes
/// nobody notices.</summary>
internal static class LineHelp
{
    /// <summary>A geometry that helps fewer than this share is named for it.</summary>
    private const double FewShare = 0.05;

    /// <summary>By how much the cost of a customer changes, on average, when both hang points are built off to one side by what is usual; 0
    /// where the study takes that as exact.</summary>
    public static double BuildTolerance(ProductLineResult result) => result.Stress
        .Where(stress => stress.Source == NoiseSource.OffsetBuilt && double.IsFinite(stress.MeanChange))
        .Select(stress => stress.MeanChange).DefaultIfEmpty(0).Max();

    /// <summary>The same with its unit.</summary>
    public static string BuildToleranceText(ProductLineResult result) =>
        $"{NumberFormat.SignificantDigits(BuildTolerance(result), 2)} {result.Setting.CostResponse.Response.Unit}".TrimEnd();

    /// <summary>The weight of the customers whom the second-best geometry of the line would serve noticeably worse, or not at
    /// all.</summary>
    public static double Helped(ProductLineResult result, int geometry)
    {
        var tolerance = BuildTolerance(result);
        return result.Assignments.Where(served => served.Geometry == geometry && served.NextCost - served.Cost > tolerance)
            .Sum(served => served.Row.Share);
    }

    /// <summary>The weight of the customers whom one more geometry would serve noticeably better; null when it was not computed.</summary>
    public static double? HelpedByOneMore(ProductLineResult result)
    {
        if (result.OneMore is not { } more)
            return null;
        var tolerance = BuildTolerance(result);
        return result.Assignments.Where((served, row) => served.Cost - more.Solution.CustomerCosts[row] > tolerance)
            .Sum(served => served.Row.Share);
    }

    /// <summary>"B helps 2 pieces only.", for each geometry that few would miss.</summary>
    public static IEnumerable<string> Few(ProductLineResult result)
    {
        if (result.Geometries.Count < 2)
            yield break;
        var all = result.Assignments.Sum(served => served.Row.Share);
        foreach (var (index, geometry) in result.Geometries.Index())
        {
            var helped = Helped(result, index);
            if (helped < FewShare * all)
                yield return helped == 0 ? $"Without {geometry.Name} nobody would notice a difference."
                    : $"{geometry.Name} helps {ProductLineText.Pieces(result.Setting, helped)} only.";
        }
    }
}
