using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.Answer;

/// <summary>What the plan taught, a sentence or two for each response.</summary>
internal static class PlanSummarySection
{
    private const int MaxTerms = 3;
    private const double MinSharePercent = 1;

    public static IEnumerable<AnswerSection> Of(StudyResult result)
    {
        if (result.Plan is not { } answer)
            yield break;
        yield return new AnswerSection("Which factors matter", [Runs(answer.Plan), .. PlanSections.OmittedTermsWarning(answer.Plan),
            .. answer.Surfaces.Select(surface => Line(answer.Plan, surface))]);
    }

    private static string Runs(StudyPlan plan) =>
        $"From a plan of {NumberFormat.Count(plan.Plan.Runs.Count)} runs ({plan.Plan.Kind}); shares are of the variation over its runs. The simple formula for each response has {PlanSections.ModelDescription(plan.Model)}. `frameopt plan` and the workbook show all of it.";

    private static string Line(StudyPlan plan, FittedSurface surface)
    {
        if (surface.Fit is not { } fit)
            return $"{surface.Response.Name}: too few runs can fly to fit a surface.";
        var names = plan.Factors.Select(factor => factor.Name).ToList();
        var terms = PlanSections.Terms(fit).Where(row => row.Share >= MinSharePercent).Take(MaxTerms)
            .Select(row => Invariant($"{row.Term.NamedWith(names)} {row.Share:0.0} %")).ToList();
        var matter = terms.Count == 0 ? "no term matters" : string.Join(", ", terms);
        return surface.Check is not { } check
            ? $"{surface.Response.Name}: {matter}."
            : $"{surface.Response.Name}: {matter}. The formula is wrong by at most "
                + $"{PlanSections.FourDigits(check.LargestError, surface.Response.Unit)}, where the response ranges over {PlanSections.FourDigits(check.Range, surface.Response.Unit)}.";
    }
}
