using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook;

/// <summary>The sheets to look things up on: the study as understood, assumptions, cautions.</summary>
internal static class ReferenceSheets
{
    /// <summary>The study as understood: machine, wing, mission and settings.</summary>
    public static void AddMachine(Spreadsheet book, Study study)
    {
        var description = StudyDescription.Of(study);
        TextSheet.Add(book, "Machine and mission", [("part", 14), ("what", 34), ("as understood", 90)], description.Select((row, i) =>
            (string[])[i > 0 && description[i - 1].Group == row.Group ? "" : row.Group, row.Label, row.Value]));
    }

    /// <summary>What the answer rests on that the study did not state, and the model's sources.</summary>
    public static void AddAssumptions(Spreadsheet book, Study study) => TextSheet.Add(
        book,
        "Assumptions",
        [("from", 16), ("what", 36), ("value", 46), ("source", 60)],
        [
            .. study.Assumptions.Select(assumption => Row("this study", assumption)),
            .. ModelAssumptions.All.Select(assumption => Row("every study", assumption)),
        ]);

    /// <summary>Safety, the limits of the model, and the standards to consult.</summary>
    public static void AddCautions(Spreadsheet book, Study study) => TextSheet.Add(
        book,
        "Cautions",
        [("about", 20), ("caution", 120)],
        [
            .. Rows("this study", study.Warnings),
            .. Rows("safety", Cautions.Safety),
            .. Rows("limits of the model", Cautions.ModelLimits),
            .. Rows("standards", Cautions.Standards),
        ]);

    private static string[] Row(string from, Assumption assumption) => [from, assumption.What, assumption.Value, assumption.Source];

    private static IEnumerable<string[]> Rows(string about, IReadOnlyList<string> texts) =>
        texts.Select((text, i) => (string[])[i == 0 ? about : "", text]);
}
