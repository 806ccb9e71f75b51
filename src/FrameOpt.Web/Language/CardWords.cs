namespace FrameOpt.Web.Language;

#pragma warning disable CS1591 // each says in its own words what it is
/// <summary>Texts of the flight card.</summary>
public static partial class Words
{
    public static class Card
    {
        public const string Title = "Flight card";
        public const string Lead =
            "What to measure on the bench, on the hook and in flight, run by run: tick it off and type the readings in. It is kept in this "
                + "browser as you type; leave empty what was not measured.";
        public const string None =
            "No card is begun yet. Its cautions, its loads and its flights follow from the frame that is built, so choose that first. Or "
                + "drop a filled form (.xlsx or .csv) on this page.";
        public const string Begin = "Begin the card";
        public const string Built = "The frame that is built";
        public const string Other = "Another frame";
        public const string IsThis = "It is this one";
        public const string Cancel = "Leave it as it is";
        public const string OffsetIsSaid = "The lateral offset stays the one that the runs of the card say.";
        public const string Sheets = "Sheets of the card";
        public const string Cautions = "Read this first";
        public const string How = "How to measure";
        public const string LeftOut = "Left out of the flights:";
        public const string Done = "Done";
        public const string AddRun = "Add a run of your own";
        public const string RemoveRun = "Remove this run";
        public const string OwnRun = "Your own run: say how it was set.";
        public const string Ask = "Work it out";
        public const string They = "What they say";
        public const string TheyLead =
            "Predicted beside measured, what was learnt, what to measure next, the hole that fits, and the study corrected by it. Any "
                + "number of runs is enough.";
        public const string Takes = "Takes half a minute or so; the page stays usable meanwhile.";
        public const string Changed = "The card or the study has changed since.";
        public const string Fitting = "fitting the study to the readings";
        public const string NothingYet = "Nothing is filled in yet.";
        public const string CorrectFirst = "Correct this first; nothing is guessed.";
        public const string TakenBefore =
            "The study names a filled form in its head: readings that it was corrected by already must not correct it once more. Begin an "
                + "empty card for new ones.";
        public const string SaveText = "Save measurements.csv";
        public const string SaveWorkbook = "Save measurements.xlsx";
        public const string Print = "Print the card (A4)";
        public const string Choose = "Take a filled form";
        public const string Clear = "Begin an empty card";
        public const string PutBack = "Put the card before this one back";
        public const string Busy = "The workbook is read or written beside the page.";
        public const string NotTaken = "Not taken";
        public const string ForCommand = "The command line takes the saved file:";

        public const string FilesHead = "On paper and as a file";

        public static string Command(string study, IEnumerable<string> settings) =>
            $"frameopt fit {study} {string.Concat(settings.Select(setting => $"--set {setting} "))}"
                + "--measured measurements.csv --out corrected.yaml";

        public static string Run(string name, string block) => block.Length == 0 ? name : $"{name}, block {block}";

        public static string Count(int filled, int of) => $"{filled} of {of}";

        public static string Counted(int filled, int of) => $"{filled} of {of} runs filled in";

        public static string ToCorrect(int findings) => findings == 1 ? "1 to correct" : $"{findings} to correct";

        public static string Empty(string title) => $"{title} is still empty.";

        public static string Ticked(string run, string? next) => next is null ? $"{run} is done." : $"{run} is done. Next: {next}.";

        public static string At(string run, string column) => $"{run}, {column}:";

        public static string Setting(string title, string value, string unit) => $"{title} {value} {unit}".TrimEnd();
    }
}
