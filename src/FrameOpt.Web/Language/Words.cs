namespace FrameOpt.Web.Language;

#pragma warning disable CS1591 // each says in its own words what it is
/// <summary>Every text of the application that does not come from a report, screen by screen: a translation replaces this folder.</summary>
public static partial class Words
{
    public static class Shell
    {
        public const string Skip = "Skip to the content";
        public const string AllStudies = "All studies";
        public const string Variant = "Variant of the study";
        public const string AsWritten = "as written";
        public const string Undo = "Undo";
        public const string Redo = "Redo";
        public const string UndoKeys = "Undo the last change (Ctrl+Z)";
        public const string RedoKeys = "Make it again (Ctrl+Y)";
        public const string Steps = "Steps";
        public const string ToCorrect = "To correct";
        public const string ToLookAt = "To look at";
        public const string CorrectFirst = "Correct this first";
        public const string NothingSent =
            "Everything is computed on this device and nothing leaves it. Ground tests first; certification and the limits of the makers "
                + "of frame and wing come before any figure here.";
        public const string NotKept =
            "This browser does not let the page keep anything, so a reload loses the study: save the study file before you close the page.";

        public static string Count(int findings) => findings == 1 ? "1 thing to correct" : $"{findings} things to correct";
    }

    public static class Start
    {
        public const string Heading = "Where do the hang points go?";
        public const string Lead =
            "Describe the machine, move a hole, and see at once what every phase leaves to the pilot. No account, no network.";
        public const string Open = "Open a study file";
        public const string OpenHow = "Choose study.yaml and what lies beside it, or drop the files on this page.";
        public const string Kept = "Kept in this browser";
        public const string KeptHow = "Clearing the data of this page in the browser deletes them; the study file is the safe copy.";
        public const string Forget = "Forget";

        public static string New(string template) => $"New: {template.Replace('-', ' ')}";
    }

    public static class Text
    {
        public const string Title = "Study file";
        public const string Lead =
            "The whole study as text, as the command line takes it. Every other screen writes here; comments stay.";

        public static string Save(string name) => $"Save {name}";
    }

    public static class Choices
    {
        public const string Title = "Choices";
        public const string Lead =
            "Every design the study allows is computed; those that no other beats are dots. Click one, or pull a weight.";
        public const string Searching = "Searching";
        public const string Search = "Search";
        public const string Stop = "Stop";
        public const string NotYet = "The designs below belong to the study before its last change.";
        public const string Nothing =
            "No design meets every limit. The answer under How sure names the nearest one and the limits in the way.";
        public const string Best = "Best compromise:";
        public const string Look = "Look at its holes";
        public const string BackToBest = "Back to the best";
        public const string OrRank = "or by rank";
        public const string FrontKey =
            "Square: best compromise. Ring: the design shown. Cross: the baseline, at the edge when it lies outside.";
        public const string Weights = "What counts how much";
        public const string SideBySide = "Side by side";
        public const string Chosen = "shown";
        public const string Baseline = "baseline";
        public const string CannotFly = "cannot fly";
        public const string CannotHold = "cannot be held";

        public static string Kept(int number) => $"kept {number + 1}";

        public static string Rank(int rank, int of) => $"Rank {rank} of {of}";

        public static string Searched(long designs, int front) =>
            FormattableString.Invariant($"{designs:N0} designs computed; {front:N0} of them are beaten by no other.");

        public static string FrontWords(int count, string across, string up) =>
            $"{count} designs that no other beats: {up} against {across}. The slider below chooses one by its rank.";
    }
}
