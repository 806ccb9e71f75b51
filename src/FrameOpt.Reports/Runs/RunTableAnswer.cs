using FrameOpt.Analysis;
using FrameOpt.Forms;
using FrameOpt.Plans;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Page;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.Reports.Runs;

/// <summary>How measured runs are analysed.</summary>
/// <param name="Columns">Which columns were read and set.</param>
/// <param name="Model">Terms to fit; null for the most that the runs can estimate.</param>
/// <param name="IsSelected">True to keep only the terms that earn their place.</param>
/// <param name="Goals">As a user writes them; may be empty.</param>
public sealed record RunAnalysisRequest(
    RunTableRequest Columns, SurfaceModel? Model, bool IsSelected, IReadOnlyList<string> Goals)
{
    /// <summary>The words for the terms.</summary>
    public static IReadOnlyList<(string Word, SurfaceModel Model)> Models { get; } =
    [
        ("linear", SurfaceModel.Linear), ("interactions", SurfaceModel.Interactions), ("squares", SurfaceModel.LinearAndSquares),
        ("quadratic", SurfaceModel.Quadratic),
    ];
}

/// <summary>What measured runs say, the same on every screen.</summary>
/// <param name="File">Name of their file.</param>
/// <param name="Analyses">One for each response.</param>
/// <param name="Sections">In words and tables, cautions last.</param>
public sealed record RunTableAnswer(string File, IReadOnlyList<RunAnalysis> Analyses, IReadOnlyList<AnswerSection> Sections)
{
    /// <summary>The answer, or null with everything there is to correct.</summary>
    /// <param name="cells">The table.</param>
    /// <param name="request">How.</param>
    /// <param name="study">To whose steps and holes a setting is rounded; null for none.</param>
    /// <param name="findings">What to correct; empty when there is an answer.</param>
    public static RunTableAnswer? Of(
        FilledForm cells, RunAnalysisRequest request, Study? study, out IReadOnlyList<Diagnostic> findings)
    {
        if (RunTableReader.Read(cells, request.Columns, out findings) is not { } table)
            return null;
        var wanted = request.Goals.Select(text => (Text: text, Goal: GoalText.Read(text, table.Responses, out var wrong), Wrong: wrong))
            .ToList();
        findings =
        [
            .. request.IsSelected && table.WholePlots.Count > 0 ? [new Diagnostic(cells.File, 0, 0, "",
                "The choice of terms (--select) does not judge runs in whole plots.",
                $"Leave it out, or remove the column {RunHeading.WholePlot} if every run was set up by itself.")]
                : Array.Empty<Diagnostic>(),
            .. wanted.Where(one => one.Goal is null)
                .Select(one => new Diagnostic("the goals", 0, 0, VisibleText.Quoted(one.Text), one.Wrong, GoalText.HowTo)),
        ];
        if (findings.Count == 0 && wanted.Count > 0 && table.Factors.Count == 0)
            findings = [new Diagnostic("the goals", 0, 0, "", "A goal needs a factor of numbers to set; here all are words.",
                "Choose by the means, without goals.")];
        if (findings.Count > 0)
            return null;
        List<RunAnalysis> analyses = table.Factors.Count == 0 ? []
            : [.. table.Responses.Select(response => RunAnalysis.Of(table, response, request.Model, request.IsSelected))];
        var optimum = wanted.Count == 0 ? null
            : RunOptimum.Of(table, [.. wanted.Select(one => (analyses[one.Goal!.Response], one.Goal.Desirability))],
                study is null ? null : StudyLevels.Of(study, table));
        return new RunTableAnswer(cells.File, analyses,
            [.. RunAnalysisSections.Of(table, analyses, optimum), new AnswerSection("Cautions", Cautions.FirstPage)]);
    }

    /// <summary>Its pictures with what to look for, as HTML, those of each response after the other.</summary>
    public IReadOnlyList<string> Pictures => [.. Analyses.SelectMany((analysis, a) => new RunPictures(analysis, $"response-{a + 1}").All)
        .Select(picture => Html.Figure(picture.Drawing, picture.Caption).ToString())];
}
