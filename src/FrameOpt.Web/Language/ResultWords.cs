namespace FrameOpt.Web.Language;

#pragma warning disable CS1591 // each says in its own words what it is
/// <summary>Texts of the answer.</summary>
public static partial class Words
{
    public static class Certainty
    {
        public const string Title = "How sure";
        public const string Lead =
            "No number of a study is exact. Here the best compromise is computed in many cases in which they are off, and the answer says "
                + "how often it is still good and what to measure first.";
        public const string Ask = "Find out how sure it is";
        public const string Computing = "how sure the answer is";
        public const string Alone = "What moves it most: each uncertain number alone";
        public const string Factors = "Which factors matter";
        public const string FactorsHow =
            "What each factor of the frame does to the objectives over the designs of the study, and over those that meet the limits: that "
                + "is what is left to choose. Nothing is sampled.";
    }

    public static class TakeAway
    {
        public const string Title = "Take away";
        public const string Lead =
            "A sheet for the workshop shows the design you look at under Holes. The files are those of the command line, "
                + "with the best compromise chosen by the search.";
        public const string Print = "Print the sheet (A4)";
        public const string Ask = "Make the files";
        public const string Zip = "frameopt-results.zip";
        public const string Takes = "Takes a minute or so; the page stays usable meanwhile.";
        public const string Changed = "The study has changed since the last run.";
        public const string Starting = "starting";
        public const string Sheet = "The sheet as it prints";
        public const string Check = "Before flight, in this order";
        public const string Feels = "What the pilot gets in each phase";
        public const string Qualified =
            "A frame is built and altered by somebody qualified for it; certification and the limits set by the makers of frame and wing "
                + "take precedence.";

        public static IReadOnlyList<string> Checks(string hangCheck) =>
        [
            "The propeller turns as drawn, seen from behind.",
            $"Hang check. {hangCheck}",
            "Tied-down run, rising slowly to full power.",
            "First flight calm and high, hands ready to close the throttle.",
        ];

        public static string Made(string version, string hash) => $"FrameOpt {version}, study {hash}.";

        public static string Writing(string name) => $"writing {name}";

        public static string Failed(string why) => $"The run did not come to its end: {why}";

        public static IReadOnlyList<(string Name, string What)> Files { get; } =
        [
            (Zip, "everything below and the study file in one"),
            ("report.html", "one page with pictures, test card and sources; opens in any browser, prints well"),
            ("template-a4.pdf", "the hang points in true size on A4: print it at 100 %, check its scale bars, then drill"),
            ("template-letter.pdf", "the same on Letter"),
            ("drawing.pdf", "drawing to scale on A3 with the dimensions"),
            ("drawing.svg", "the same as a picture"),
            ("holes.dxf", "holes and outline for a drawing or cutting program, in mm"),
            ("results.xlsx", "workbook with live ranking and what-if"),
            ("designs.csv", "every design that no other beats"),
            ("plan.csv", "the runs of the plan"),
            ("run.json", "the run for other programs"),
        ];
    }
}
