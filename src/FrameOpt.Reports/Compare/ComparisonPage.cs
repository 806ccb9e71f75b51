using System.Xml.Linq;
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
        new XElement("dl", new XAttribute("class", "stamp"), Stamp(comparison).Select(item => Fact(item.What, item.Value))));

    private static IEnumerable<(string What, string Value)> Stamp(Comparison comparison) =>
    [
        ("designs", $"{comparison.Columns.Count}"),
        ("runs", $"{comparison.Columns.DistinctBy(column => column.Run.Folder).Count()}"),
        ("studies", comparison.Differences.All(differences => differences.Count == 0) ? "the same" : "differ: see how, below"),
        ("one question", comparison.Warnings.Count == 0 ? "yes" : "look again, below"),
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
            "phases", phases.Title, Html.Figure(ComparisonBars.Of(comparison),
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
        column.Phases.Any(phase => phase.Effort > 1) ? Html.Paragraph("warning", ComparisonSections.Headline(column))
            : Html.Paragraph(ComparisonSections.Headline(column))));

    /// <summary>All at one scale, that of the largest.</summary>
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

    private static IEnumerable<XElement> CautionParts(Comparison comparison) =>
    [
        Html.List([.. comparison.Columns.SelectMany(column => column.Run.Warnings).Distinct(), .. Cautions.FirstPage.Skip(1),
            .. Cautions.Safety.Except([Cautions.Danger, Cautions.GroundTestFirst])]),
        Html.Heading("What the model leaves out"),
        Html.List(Cautions.ModelLimits.Except(Cautions.FirstPage)),
        Html.Heading("Standards"),
        Html.List(Cautions.Standards),
    ];

    private static IEnumerable<XElement> Reproduce(Comparison comparison)
    {
        var runs = comparison.Columns.DistinctBy(column => column.Run.Folder).Select(column => column.Run).ToList();
        yield return Html.Paragraph("The same study files and the same version give the same figures:");
        yield return new XElement("pre", new XElement("code", string.Join('\n',
        [
            .. runs.Select(run => $"{ReproducePart.Command(run.StudyFile, run.Variant)} --out {ReproducePart.Quoted(run.Folder)}"),
            $"frameopt compare {string.Join(' ', comparison.Columns.Select(column => ReproducePart.Quoted(column.Position == 1 ? column.Run.Folder : FormattableString.Invariant($"{column.Run.Folder}:{column.Position}"))))}",
        ])));
        foreach (var run in runs)
        {
            yield return Html.Heading(
                $"{string.Join(" and ", comparison.Columns.Where(column => column.Run.Folder == run.Folder).Select(column => column.Letter))}: {run.Folder}");
            yield return new XElement(
                "dl",
                new XAttribute("class", "facts"),
                Fact("study file", run.StudyFile),
                Fact("its SHA-256", run.Hash),
                Fact("computed with", $"FrameOpt {run.Version}"),
                Fact("designs evaluated", NumberFormat.Count(run.Evaluated)),
                Fact("on the front", NumberFormat.Count(run.FrontCount)),
                Fact("why the search ended", run.StopReason),
                Fact("assumptions and sources", "report.html, results.xlsx and run.json in the folder of the run"));
        }
    }

    private static XElement Fact(string what, string value) => new("div", new XElement("dt", what), new XElement("dd", value));
}
