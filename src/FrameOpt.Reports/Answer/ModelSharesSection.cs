using FrameOpt.Analysis;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.Answer;

/// <summary>Which factors matter in the model itself, whatever the runs of a plan show of it.</summary>
public static class ModelSharesSection
{
    private const double MinShare = 0.01;

    /// <summary>Of the largest mean change, below which an uncertain number is not shown.</summary>
    private const double LeastShown = 0.1;

    /// <summary>Mean over mean magnitude, from which a change has one direction.</summary>
    private const double OneWay = 0.9;

    /// <summary>Every factor's shares in every response.</summary>
    public static AnswerSection Of(ModelShares shares) => new("Which factors matter in the model itself", Lines(shares),
        new AnswerTable(
            ["response", "factor", "alone [%]", "with interactions [%]", "Shapley effect [%]", "within the limits: Shapley effect [%]"],
            [.. shares.Responses.SelectMany(response => shares.Factors.Select((factor, f) => (IReadOnlyList<string>)
            [
                f == 0 ? response.Response.Name : "",
                factor.Name,
                Cell(response.Everywhere, f, share => share.Alone),
                Cell(response.Everywhere, f, share => share.Total),
                Cell(response.Everywhere, f, share => share.Shapley),
                Cell(response.WithinLimits, f, share => share.Shapley),
            ]))]));

    /// <summary>"lateral_offset 86 %, suspension_height 9 %": factors of 1 % or more, within the limits where the study has
    /// some.</summary>
    public static string Summary(ModelShares shares, ResponseShares response)
    {
        var (which, where) = response.WithinLimits.Count > 0 ? (response.WithinLimits, " within the limits") : (response.Everywhere, "");
        var matter = which.Zip(shares.Factors).Where(pair => pair.First.Shapley >= MinShare).OrderByDescending(pair => pair.First.Shapley)
            .Select(pair => Invariant($"{pair.Second.Name} {100 * pair.First.Shapley:0} %")).ToList();
        return matter.Count == 0 ? "no factor changes it" : $"{string.Join(", ", matter)}{where}";
    }

    /// <summary>How far every factor and the larger of the uncertain numbers move each response.</summary>
    public static AnswerSection Of(Screening screening) => new("How far each input moves a response (elementary effects, Morris)",
        [
            $"Estimates from {NumberFormat.Count(screening.Paths, "random path")} through the ranges of all {screening.Inputs.Count} "
                + "factors and uncertain numbers, each with one step of every input. Mean change: over the whole range of a factor, or "
                + "from the 10 % to the 90 % point of an uncertain number, regardless of sign. Spread: how much that differs from place "
                + "to place; large where an input bends the response or acts together with others. The standard error of a mean change is "
                + "a sixth of its spread.",
            Invariant($"Uncertain numbers below {100 * LeastShown:0} % of the largest change are not shown."),
        ],
        new AnswerTable(["response", "input", "mean change", "spread", "with more of it, or that way, the response"],
            [.. screening.Responses.SelectMany(response => Shown(screening, response).Select((i, row) => (IReadOnlyList<string>)
            [
                row == 0 ? PlanLabels.WithUnit(response.Response.Name, response.Response) : "",
                screening.Inputs[i].Uncertain is { } source ? $"uncertain: {source.Title} ({source.More})" : screening.Inputs[i].Name,
                NumberFormat.SignificantDigits(response.Effects[i].MeanMagnitude, 3),
                NumberFormat.SignificantDigits(response.Effects[i].Deviation, 3),
                Direction(response.Effects[i]),
            ]))]));

    private static IEnumerable<int> Shown(Screening screening, ScreenedResponse response)
    {
        var largest = response.Effects.Max(effect => effect.MeanMagnitude);
        return Enumerable.Range(0, screening.Inputs.Count)
            .Where(i => double.IsFinite(response.Effects[i].MeanMagnitude)
                && (screening.Inputs[i].IsFactor || response.Effects[i].MeanMagnitude >= LeastShown * largest))
            .OrderByDescending(i => response.Effects[i].MeanMagnitude);
    }

    private static string Direction(ElementaryEffect effect) => effect.MeanMagnitude == 0 ? "stays"
        : Math.Abs(effect.Mean) < OneWay * effect.MeanMagnitude ? "rises or falls" : effect.Mean > 0 ? "rises" : "falls";

    private static IReadOnlyList<string> Lines(ModelShares shares)
    {
        var thinned = shares.IsThinned ? ", some levels of each factor" : "";
        var within = shares.WithinLimits == shares.Designs ? "every one meets the limits"
            : $"{NumberFormat.Count(shares.WithinLimits)} of them meet every limit";
        List<string> lines =
        [
            $"From {NumberFormat.Count(shares.Designs, "design")} of the study's grid{thinned}, each counted once; {within}. Nothing is "
                + "sampled and no polynomial is fitted, so these do not depend on a plan.",
            "Shares are of the variance of the response. Alone: the first-order Sobol index. With interactions: the total Sobol index. The "
                + "Shapley effect divides what factors do together evenly among them; the effects of all factors add up to 100 %.",
        ];
        if (shares.Responses.Any(response => response.WithinLimits.Count > 0))
            lines.Add("Within the limits the factors depend on each other, and often other ones matter: this is what is left to choose.");
        return lines;
    }

    private static string Cell(IReadOnlyList<FactorShare> shares, int factor, Func<FactorShare, double> which) =>
        shares.Count == 0 ? "" : Invariant($"{100 * Math.Max(0, which(shares[factor])):0.0}");
}
