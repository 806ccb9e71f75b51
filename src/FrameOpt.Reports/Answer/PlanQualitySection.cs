using FrameOpt.Plans;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.Answer;

/// <summary>How well a plan would estimate its terms if its runs were measured, with noise, instead of computed.</summary>
public static class PlanQualitySection
{
    /// <summary>Efficiencies, and for each term its standard error, its variance inflation and the chance to see it.</summary>
    public static AnswerSection Of(StudyPlan plan)
    {
        const string title = "If its runs were measured";
        var model = new PlanModel(plan.Terms);
        if (PlanQuality.Of(plan.Plan, model) is not { } quality)
            return new AnswerSection(title, ["These runs cannot tell all the terms apart, so there is no quality to give."]);
        List<string> lines =
        [
            Invariant($"D efficiency {quality.DEfficiency:0.000}, A efficiency {quality.AEfficiency:0.000}, G efficiency {quality.GEfficiency:0.000}; ")
                + Invariant($"mean variance of prediction over the cube {quality.AverageVariance:0.000} of the noise's; ")
                + $"{quality.ErrorDegreesOfFreedom} runs left over to measure the noise.",
            "Standard errors are multiples of the noise (standard deviation of one run). The chances are those of a two-sided t test at 5 % to see a change from low "
                + "to high (for a square: from the middle to an end, half of that) as large as the noise, and twice as large.",
        ];
        return new AnswerSection(title, lines, new AnswerTable(
            ["term", "standard error", "variance inflation", "chance, change = noise", "chance, twice the noise"],
            [.. quality.Terms.Select((term, t) => (IReadOnlyList<string>)
            [
                term,
                Invariant($"{quality.StandardErrors[t]:0.000}"),
                double.IsNaN(quality.VarianceInflation[t]) ? "" : Invariant($"{quality.VarianceInflation[t]:0.00}"),
                PowerText(quality, t, 0.5),
                PowerText(quality, t, 1),
            ])]));
    }

    private static string PowerText(PlanQuality quality, int term, double coefficient) =>
        term == 0 || quality.ErrorDegreesOfFreedom < 1 ? "" : Invariant($"{PlanPower.Of(quality, term, coefficient, 1):0.00}");
}
