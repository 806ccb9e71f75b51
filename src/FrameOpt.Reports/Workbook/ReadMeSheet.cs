using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Reports.Workbook.Charts;
using FrameOpt.Reports.Workbook.LiveRanking;
using FrameOpt.Reports.Workbook.Plans;
using FrameOpt.Reports.Workbook.WhatIf;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook;

/// <summary>What the workbook holds and how to use it, in plain words.</summary>
internal static class ReadMeSheet
{
    public const string Name = "Read me";

    public static void Add(Spreadsheet book, RunReport report) =>
        TextSheet.Add(book, Name, [("what", 26), ("in plain words", 120)], Rows(report), isPrinted: false);

    private static IEnumerable<string[]> Rows(RunReport report)
    {
        var result = report.Result;
        yield return [
            "this workbook",
            $"{result.Study.FullTitle}. Written by FrameOpt {report.Info.ToolVersion} from {report.Info.StudyFileName}, SHA-256 "
                + $"{result.Study.Hash}. The same study gives the same workbook."];
        yield return [
            "before you build", $"{Cautions.Danger} {Cautions.GroundTestFirst} Read the sheets Summary, Assumptions and Cautions first."];
        if (result.Front.Count > 0 && !result.Study.IsOneFrame)
        {
            yield return [
                "to change the weights",
                "Go to the sheet Ranking and enter values in the framed blue cells of the column weight. Only their ratios matter. "
                    + "Score, rank and order are recalculated at once."];
            yield return [
                "to tighten a limit",
                "On the sheet Ranking enter values in the columns at least and at most; clear a cell to remove the limit. A limit looser "
                    + "than the study's adds no designs, because the run kept only those that meet it. Run the study again for that."];
            yield return [
                "to try another yaw leverage",
                "On the sheet Ranking choose it from the list. It is the least certain parameter of the model: check whether the choice "
                    + "still holds."];
        }

        if (result.Front.Count > 0)
        {
            yield return [
                "to try another design", "On the sheet What if enter spacing, lateral offset, suspension height and thrust-line angle."];
        }

        foreach (var (sheet, words) in Sheets(result))
            yield return [$"sheet {sheet}", words];
        yield return [
            "signs and units",
            "Every header gives the unit; dimensions are in the units of the study file. Offsets, angles, moments and residuals are "
                + "positive to the pilot's right. Left and right are the pilot's, seen from behind."];
        yield return ["heights", $"Suspension heights are measured from datum to hang point. {DatumText.Sentence(result.Study.Machine)}"];
        yield return [
            "to print",
            "The answer, the best ranked designs and what they rest on print on 9 pages of A4 at most. This sheet and those of figures and "
                + "workings (Front, Phases, the runs of a plan, data) are left out: to print one, clear its print area."];
        yield return ["size limits", Limits(report)];
        yield return [
            "if values do not change",
            "Your spreadsheet program may be set to manual calculation: in most programs F9 recalculates."];
    }

    private static IEnumerable<(string Sheet, string Description)> Sheets(StudyResult result)
    {
        var (hasFront, isOneFrame, hasPlan) = (result.Front.Count > 0, result.Study.IsOneFrame, result.Plan is not null);
        yield return (
            "Summary", "the answer: what to drill, the residual torque in each phase, what it costs elsewhere, what to check before "
                + "flight.");
        if (hasFront)
        {
            if (!isOneFrame)
                yield return (
                    RankingLayout.Sheet,
                    "live: enter weights, limits, baseline and yaw leverage; the designs are ranked accordingly.");
            if (result.Uncertainty is { Bars.Count: > 0 })
                yield return (HowSureSheet.Name, "in how many cases the design is good, and what each uncertain number does alone.");
            yield return (WhatIfLayout.Sheet, "live: enter any design and see its residual torque in every phase.");
            yield return (
                ChartSheets.SheetName,
                $"{(isOneFrame ? "" : "two views of the front, ")}the residual torque of each phase, torque and residual against "
                    + "propeller speed. Native charts: click and change them.");
            if (!isOneFrame)
                yield return ("Front", "the designs that no other design dominates, ranked, to sort and filter.");
            yield return ("Phases", isOneFrame ? "every phase of this frame." : "every phase of each of those designs.");
        }

        if (hasPlan)
        {
            yield return (
                PlanSheet.Name, "the runs of the study's plan, the result of the model for each, and the alias structure of the plan.");
            yield return (EffectsSheet.Name, "for each response its main effects and interactions, and how it varies with each factor.");
            yield return (
                SurfaceSheet.Name,
                "for each response a polynomial fitted to those runs, its error against the model, and a map of it.");
        }

        yield return ("Machine and mission", "the study as the tool understood it.");
        yield return ("Assumptions", "assumed values that the study did not give, with sources.");
        yield return ("Cautions", "safety, and what the model neglects.");
        if (hasFront)
        {
            if (!isOneFrame)
                yield return (RankingLayout.DataSheetName, "the figures and formulas behind the sheet Ranking.");
            yield return (WhatIfLayout.DataSheetName, "the table behind the sheet What if.");
            yield return (ChartSheets.DataSheetName, "the figures behind the charts.");
        }
    }

    private static string Limits(RunReport report) =>
        $"At most the best {NumberFormat.Count(DisplayedDesigns.Most(report.Result.Study))} designs by rank of a front of any size "
        + $"(this run: {NumberFormat.Count(report.Result.Front.Count)}; designs.csv contains all); "
        + "tested with fronts up to 5,000 designs, 1 to 100 phases, 2 to 5 objectives, titles in any script and names of 300 characters. "
        + "Charts show the first three objectives.";
}
