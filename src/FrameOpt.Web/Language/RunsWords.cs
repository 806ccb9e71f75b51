namespace FrameOpt.Web.Language;

#pragma warning disable CS1591 // each says in its own words what it is
/// <summary>Texts of measured runs.</summary>
public static partial class Words
{
    public static class Runs
    {
        public const string Title = "Measured runs";
        public const string Lead =
            "A table of runs that were made and measured, of a frame, a propeller or a test stand: which factors matter, how far the model "
                + "was right, which run looks odd.";
        public const string Table = "The runs";
        public const string TableHow =
            "A row of headers, then a row for each run: what was set, and what was read. Copy it from a spreadsheet and paste it here, or "
                + "drop the file (.csv or .xlsx) on this page. A column `block` or `run` is taken as such.";
        public const string FromPlan = "Begin with the runs of this study's plan";
        public const string NoPlan =
            "This study has no plan of runs. Any table will do; a plan (`plan: { kind: central composite }` in the study file) gives one "
                + "that tells the most from few runs.";
        public const string Take = "Take a file";
        public const string SaveTable = "Save the table";
        public const string How = "How to analyse";
        public const string Terms = "Terms to fit";
        public const string AsMany = "as many as the runs can estimate";
        public const string Select = "Keep only the terms that earn their place";
        public const string Goals = "Goals, one a line";
        public const string GoalsHow = "For the setting that meets all of them best: `lean less 10..60`, `thrust more 500..600` or "
            + "`pitch near 2..5..8`. Leave it empty for none.";
        public const string Ask = "Analyse";
        public const string Takes = "Takes a few seconds.";
        public const string Changed = "The table or the way to analyse it has changed since.";
        public const string Starting = "reading the runs";
        public const string Busy = "This is read or made beside the page.";
        public const string Refused = "Correct this first; nothing is guessed.";
        public const string Pictures = "In pictures";
        public const string Page = "runs.html";

        public static IReadOnlyList<(string Name, string What)> Files { get; } =
            [(Page, "this answer with its pictures as one page, for the file or for paper")];
    }
}
