using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>Why a cell of the fitting chart is grey, or has a letter that one would not expect between its neighbours.</summary>
internal static class FittingChartReasons
{
    private const int MostNamed = 6;

    /// <summary>A sentence for each grey span and for each that lies between two of one other geometry.</summary>
    public static IEnumerable<string> Of(ProductLineResult result) => result.Chart.Blocks.SelectMany(block => block.Columns.SelectMany(
        column => column.Spans.Select((span, s) => Reason(result, block, column, span, Neighbour(column.Spans, s)))))
        .OfType<string>();

    /// <summary>The combinations that no customer has, which the chart leaves out.</summary>
    public static IEnumerable<string> NotSold(ProductLineResult result)
    {
        var setting = result.Setting;
        string[] missing = [.. Enumerable.Range(0, setting.Configurations.Count).Except(setting.Sold)
            .Select(configuration => setting.Configurations[configuration].Description)];
        if (missing.Length > 0)
            yield return $"Not in the chart, because no customer has it: {string.Join("; ", missing.Take(MostNamed))}"
                + (missing.Length > MostNamed ? $" and {NumberFormat.Count(missing.Length - MostNamed)} more." : ".");
    }

    /// <summary>What every frame has against it, said once where it is the same.</summary>
    private static string Grey(CustomerFit fit)
    {
        if (fit.Frames.Count == 0)
            return "the line has no geometry";
        var nearest = fit.Frames[0];
        return fit.Frames.All(frame => frame.Design.Failure?.Cause == nearest.Design.Failure?.Cause && nearest.Design.Failure is not null)
            ? $"no frame can fly: {FailureText.Describe(nearest.Design.Failure!)}"
            : nearest.Broken.Count > 0 && fit.Frames.All(frame => frame.Broken.Contains(nearest.Broken[0]))
                ? $"no frame meets the limit; {nearest.Geometry.Name} comes nearest but {CustomerCard.Why(nearest)}"
                : string.Join(" and ", fit.Frames.Select(frame => $"{frame.Geometry.Name} {CustomerCard.Why(frame)}"));
    }

    /// <summary>The geometry on both sides of a span; null where they differ or there is none.</summary>
    private static int? Neighbour(IReadOnlyList<FittingSpan> spans, int s) =>
        s > 0 && s + 1 < spans.Count && spans[s - 1].Geometry == spans[s + 1].Geometry && spans[s - 1].Geometry >= 0
            ? spans[s - 1].Geometry : null;

    private static string? Reason(ProductLineResult result, FittingBlock block, FittingColumn column, FittingSpan span, int? neighbour)
    {
        if (span.Geometry >= 0 && neighbour is null)
            return null;
        var middle = (span.FromKilograms + span.ToKilograms) / 2;
        var fit = CustomerFit.Of(result, new ProductLineCustomer("", middle, column.Configuration, 1));
        var where = $"{column.Name}{(block.Title.Length > 0 ? $", {block.Title}" : "")}, {FittingChartText.Masses(span)}: ";
        var kilograms = FormattableString.Invariant($"at {middle} kg ");
        if (span.Geometry < 0)
            return $"{where}grey, because {kilograms}{Grey(fit)}.";
        var expected = fit.Frames.First(frame => frame.Geometry == result.Geometries[neighbour!.Value]);
        return where + $"{result.Geometries[span.Geometry].Name}, because {kilograms}{expected.Geometry.Name} "
            + (expected.IsAllowed ? $"leaves {CustomerCard.Value(result, expected)} and "
                + $"{result.Geometries[span.Geometry].Name} {CustomerCard.Value(result, fit.Own!)}." : $"{CustomerCard.Why(expected)}.");
    }
}
