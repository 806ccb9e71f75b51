namespace FrameOpt.Web.Language;

#pragma warning disable CS1591 // each says in its own words what it is
/// <summary>Texts of the product line.</summary>
public static partial class Words
{
    public static class Line
    {
        public const string Title = "Product line";
        public const string Lead =
            "Which few geometries to make for many customers: who gets which, who is served worst, what one more would gain.";
        public const string None = "This study has no product line. Paste the customers below to begin one, or begin with the template "
            + "`product line` under all studies, which has options (engine, wing) as well.";
        public const string Wanted = "What is wanted";
        public const string Customers = "Customers";
        public const string CustomersHow =
            "Copy the table from a spreadsheet and paste it here, headers first: name, pilot_mass [kg], count, and a column for each "
                + "option of the study.";
        public const string Elsewhere = "The customers stand in the study file, not in a table: change them there.";
        public const string Ask = "Work out the line";
        public const string Cards = "cards.html";
        public const string Slow =
            "The same method as the command line, save that questions of the worst-served customer go without a solver that is machine "
                + "code: with many geometries they can take minutes here, and `frameopt line` answers them sooner.";

        public static IReadOnlyList<(string Path, string Label, string Hint)> Fields { get; } =
        [
            ("line.variants", "How many geometries", ""),
            ("line.up_to", "Compared with up to", "what one more, or one less, would change"),
            ("line.objective", "Objective", "mean, worst, percentile 90 %, blend 30 % (the mean and the worst-served)"),
            ("line.response", "What counts", "a response of the study, as effort_worst"),
            ("line.candidates", "Chosen from", "front, or grid: every design of the study"),
        ];

        public static IReadOnlyList<(string Name, string What)> Files { get; } =
        [
            (TakeAway.Zip, "everything below and the study file in one"),
            ("line.html", "one page: geometries, customers, fitting chart, gain"),
            ("line.xlsx", "the same as a workbook"),
            ("fitting-chart.svg", "for the wall"),
            (Cards, "a sheet of A4 for each customer: frame, second-best frame, what each phase feels like, hang check"),
            ("customers.csv", "every customer and its geometry"),
            ("line.json", "the line for other programs"),
        ];

        /// <summary>The section of a new line, on a line of its own.</summary>
        public static string New(string customers) =>
            $"line: {{ variants: 3, objective: mean, response: effort_worst, customers: {customers} }}";
    }
}
