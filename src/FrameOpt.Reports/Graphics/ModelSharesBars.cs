using System.Xml.Linq;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.Graphics;

/// <summary>Which factors matter to one response in the model itself: Shapley effects, over all designs and over those that meet the
/// limits.</summary>
internal static class ModelSharesBars
{
    private const double Side = 8;
    private const double Reach = 270;
    private const double Top = 40;
    private const double RowStep = 42;

    /// <summary>The picture.</summary>
    /// <param name="id">Unlike every other on the page.</param>
    /// <param name="shares">Of the model.</param>
    /// <param name="response">One of them, which changes.</param>
    public static XElement Of(string id, ModelShares shares, ResponseShares response)
    {
        var hasLimits = response.WithinLimits.Count > 0;
        List<string> names = [.. shares.Factors.Select(PlanLabels.Name)];
        return Svg.Picture(id, Plot.Width, Top + names.Count * RowStep,
            $"Shapley effects of the factors on {PlanLabels.WithUnit(response.Response)} in the model itself [%]",
            string.Join("; ", names.Select((name, f) => Invariant($"{name} {Percent(response.Everywhere[f].Shapley):0.0} %")
                + (hasLimits ? Invariant($", within the limits {Percent(response.WithinLimits[f].Shapley):0.0} %") : ""))) + ".",
            [
                Svg.Text("axis", Side, 12, "start", "Shapley effect in the model itself [% of the variance]"),
                Svg.Rectangle("bar-2", Side, 19, 20, 9),
                Svg.Text("axis", Side + 26, 28, "start", "all designs"),
                .. hasLimits
                    ? [Svg.Rectangle("bar-1", Side + 110, 19, 20, 9), Svg.Text("axis", Side + 136, 28, "start", "within the limits")]
                    : Array.Empty<XElement>(),
                .. names.SelectMany((name, f) => Row(name, Top + f * RowStep, response.Everywhere[f].Shapley,
                    hasLimits ? response.WithinLimits[f].Shapley : null)),
            ]);
    }

    private static IEnumerable<XElement> Row(string name, double top, double everywhere, double? within)
    {
        yield return Svg.Text("name", Side, top + 10, "start", name);
        foreach (var (share, cssClass, down) in new[] { ((double?)everywhere, "bar-2", 13), (within, "bar-1", 25) })
        {
            if (share is not { } value)
                continue;
            var width = Math.Max(0.8, Percent(value) / 100 * Reach);
            yield return Svg.Rectangle(cssClass, Side, top + down, width, 9);
            yield return Svg.Text("tick", Side + width + 5, top + down + 8, "start", Invariant($"{Percent(value):0.0} %"));
        }
    }

    private static double Percent(double share) => 100 * Math.Max(0, share);
}
