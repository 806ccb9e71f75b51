using FrameOpt.Reports.Text;

namespace FrameOpt.Web.Language;

#pragma warning disable CS1591 // each says in its own words what it is
/// <summary>Texts of two scales.</summary>
public static partial class Words
{
    public static class Scales
    {
        public const string Title = "Scales";
        public const string Lead =
            "Hang frame and pilot from two scales, engine off, and type in what they read: where the centre of gravity is, why, and which "
                + "hole fits now.";
        public const string Hung = "The frame that hung";
        public const string AsLookedAt = "The design under Holes";
        public const string AsBaseline = "The study's baseline";
        public const string NoBaseline = "The study has no baseline.";
        public const string Variant = "A variant is chosen above; scales correct the study as written, without it.";
        public const string Before = "Before you hang in it";
        public const string Readings = "What the scales read";
        public const string LeftName = "left scale";
        public const string RightName = "right scale";
        public const string Left = "Scale on the pilot's LEFT";
        public const string Right = "Scale on the pilot's RIGHT";
        public const string Hint = "kgf, kg, lb, lbf or N; a comma or a point";
        public const string Wait = "Both readings are wanted.";
        public const string Computing = "Computing";
        public const string NoLoad = "Both scales read 0: nothing hangs from them.";
        public const string Take = "Take the corrected study over";
        public const string Taken = "Taken over into the study; Undo takes it back.";
        public const string TakenBefore =
            "The study names a hang check in its head: readings that it was corrected by already must not correct it once more.";
        public const string Nothing = "No number of the study changes.";
        public const string Look = "Look at the hole that fits";
        public const string Save = "Save it as a file";
        public const string Taking = "the button above takes them over, with your comments, and Undo takes them back.";

        public static string Frame(string design) => $"{StudyText.Capitalised(design)}.";

        public static string CorrectedName(string name) => $"corrected-{name}";
    }
}
