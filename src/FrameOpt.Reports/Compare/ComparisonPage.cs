using System.Xml.Linq;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Page;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Compare;

/// <summary>comparison.html: one file that needs nothing else and no script, for the screen, the phone and paper.</summary>
public static class ComparisonPage
{
    /// <summary>The page as text; the same for the same runs.</summary>
    public static string Of(Comparison comparison)
    {
        var style = PageTemplate.ReadResource("page.css") + PageTemplate.ReadResource("comparison.css");
        return PageTemplate.Of($"{comparison.Title} - FrameOpt comparison", style, script: null,
            [Head(comparison), PageTemplate.Main(Parts(comparison)), PageTemplate.Footer()]);
    }

    private static XElement Head(Comparison comparison) => new(
        "header",
        Html.Paragraph("kind", "Hang points and thrust line: comparison"),
        new XElement("h1", comparison.Title),
        Html.Facts("stamp", Stamp(comparison)));

    private static IEnumerable<(string What, string Value)> Stamp(Comparison comparison) =>
    [
        ("designs", $"{comparison.Columns.Count}"),
        ("runs", $"{comparison.Columns.DistinctBy(column => column.Run.Folder).Count()}"),
        ("studies", comparison.Differences.All(differences => differences.Count == 0) ? "the same" : "differ: see below"),
        ("comparable", comparison.Warnings.Count == 0 ? "yes" : "see the warnings below"),
        ("computed with", $"FrameOpt {comparison.Columns[0].Run.Version}"),
    ];

    private static IEnumerable<XElement> Parts(Comparison comparison)
    {
        var (phases, mission, drilling) = (ComparisonSections.Phases(comparison), ComparisonSections.Mission(comparison),
            ComparisonSections.Drilling(comparison));
        yield return Html.Section("designs", ComparisonSections.Designs(comparison).Title,
            [Designs(comparison), .. Warnings(comparison), Html.Paragraph("danger", Cautions.FirstPage[0])]);
        yield return Html.Section("drill", drilling.Title, Frames(comparison), Html.SectionBody(drilling));
        yield return Html.Section(
            "phases", phases.Title, Html.Figure(Bars(comparison),
                "Residual torque is what is left for the pilot to hold by leaning or braking."), Html.SectionBody(phases));
        yield return Html.Section("mission", mission.Title, Html.SectionBody(mission));
        yield return Html.Section("differences", ComparisonSections.DifferencesTitle,
            ComparisonSections.DifferencesByColumn(comparison).SelectMany(part =>
            (XElement?[])[part.Heading.Length > 0 ? Html.Heading(part.Heading) : null, Html.List(part.Lines)]));
        yield return Html.Section("cautions", "Cautions and limits of the model", CautionParts(comparison));
        yield return Html.Section("reproduce", "Sources, and how to reproduce it", Reproduce(comparison));
    }

    private static IEnumerable<XElement> Warnings(Comparison comparison) => comparison.Warnings.Count == 0
        ? []
        : [Html.Heading(ComparisonSections.WarningsTitle), .. comparison.Warnings.Select(warning => Html.Paragraph("danger", warning))];

    private static XElement Designs(Comparison comparison) => Html.Block("designs", comparison.Columns.Select(column =>
        column.Phases.Any(phase => phase.CannotBeHeld) ? Html.Paragraph("warning", ComparisonSections.Headline(column))
            : Html.Paragraph(ComparisonSections.Headline(column))));

    /// <summary>All frames at one scale, that of the largest.</summary>
    private static XElement Frames(Comparison comparison)
    {
        var scales = comparison.Columns.Select(column => FrameScale.Of(
            column.Run.Machine, [.. comparison.Columns.Select(any => any.Geometry)])).ToList();
        var scale = new FrameScale(
            scales.Min(each => each.UnitsPerMetre), scales.Max(each => each.TopMetres), scales.Min(each => each.BottomMetres),
                scales.Max(each => each.FrontMetres), scales.Min(each => each.RearMetres));
        return Html.Block("side", comparison.Columns.Select(column => Html.Block(
            "frame-of",
            Html.Heading(column.Name),
            Html.Figure(FrameRearView.Of($"frame-{column.Letter}", column.Run.Machine, column.Run.Factors, column.Geometry, scale)))));
    }

    private static XElement Bars(Comparison comparison)
    {
        var designs = comparison.Columns.Select(column => new ResidualSeries(
            column.Name, column.Letter, [.. column.Phases.Select(phase => (phase.Name, phase[PhaseQuantity.Residual]))])).ToList();
        return ResidualBars.Of("bars", designs,
            Math.Max(0.1, designs.SelectMany(design => design.Phases).Max(phase => Math.Abs(phase.ResidualNewtonMetres))));
    }

    private static IEnumerable<XElement> CautionParts(Comparison comparison)
    {
        var groups = CautionsSection.Full(
            [.. comparison.Columns.SelectMany(column => column.Run.Warnings).Distinct(), .. Cautions.FirstPage.Skip(1)]);
        yield return Html.List(groups[0].Lines);
        foreach (var group in groups.Skip(1))
        {
            yield return Html.Heading(group.Title);
            yield return Html.List(group.Lines);
        }
    }

    private static IEnumerable<XElement> Reproduce(Comparison comparison)
    {
        var runs = comparison.Columns.DistinctBy(column => column.Run.Folder).Select(column => column.Run).ToList();
        yield return Html.Paragraph("The same study files and the same version give the same figures:");
        yield return new XElement("pre", new XElement("code", string.Join('\n',
        [
            .. comparison.Columns.Where(column => !column.IsDesignOfFirst).Select(column => column.Run).DistinctBy(run => run.Folder)
                .Select(run => $"{StudyPart.Command(run.StudyFile, run.Variant)} --out {StudyPart.Quoted(run.Folder)}"),
            $"frameopt compare {(comparison.IsSameDesign ? "--same-design " : "")}"
                + $"{string.Join(' ', comparison.Columns.Select(column => StudyPart.Quoted(Argument(column))))}",
        ])));
        foreach (var run in runs)
        {
            var letters = comparison.Columns.Where(column => column.Run.Folder == run.Folder).Select(column => column.Letter);
            yield return Html.Heading($"{string.Join(" and ", letters)}: {run.Folder}");
            yield return Html.Facts("facts",
            [
                ("study file", run.StudyFile),
                ("SHA-256", run.Hash),
                ("computed with", $"FrameOpt {run.Version}"),
                .. comparison.IsSameDesign && run != runs[0] ? [("design", "that of A, evaluated under this study")]
                    : ((string, string)[])
                    [
                        ("designs evaluated", NumberFormat.Count(run.Evaluated)),
                        ("on the front", NumberFormat.Count(run.FrontCount)),
                        ("why the search ended", run.StopReason),
                        ("assumptions and sources", "report.html, results.xlsx and run.json in the folder of the run"),
                    ],
            ]);
        }
    }

    private static string Argument(ComparedColumn column) =>
        column.Position == 1 ? column.Run.Folder : FormattableString.Invariant($"{column.Run.Folder}:{column.Position}");
}
