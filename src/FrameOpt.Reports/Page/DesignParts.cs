using System.Xml.Linq;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Page;

/// <summary>The topics of the answer that follow the design shown, with their pictures.</summary>
internal static class DesignParts
{
    /// <summary>What the design leaves in each phase, in words and beside other designs.</summary>
    public static XElement? Phases(PageContent content)
    {
        if (content.Binder is not { } binder)
            return null;
        var others = content.IsFeasible ? ComparedDesign.Of(content.Report).Skip(1).ToList()
            : content.Result.Baseline is { Failure: null } baseline ? [new ComparedDesign("baseline", baseline)]
            : new List<ComparedDesign>();
        var hasCases = content.Result.Uncertainty is { Bars.Count: > 0 };
        var largest = binder.Views.Select(view => view.Evaluation).Concat(others.Select(other => other.Evaluation))
            .SelectMany(design => design.Phases).Max(phase => Math.Abs(phase[PhaseQuantity.Residual]));
        // The lines at what a pilot can hold are in the picture unless they would make the bars less than half as long.
        largest = Math.Max(largest, Math.Min(2 * largest, binder.Views[0].Evaluation.Phases.Max(phase =>
            Math.Abs(phase[PhaseQuantity.WeightShiftAuthority]))));
        largest = Math.Max(largest, Band(content.Result).SelectMany(ends => new[] { -ends.Low, ends.High }).Where(double.IsFinite)
            .DefaultIfEmpty(0).Max());
        return Html.Section(
            "phases",
            PhasesSection.Of(content.Result, binder.Views[0].Evaluation).Title,
            binder.Bind(view => Html.Block("words", Html.List(PhasesSection.Of(view.Result, view.Evaluation).Lines))),
            binder.Bind(view => Html.Figure(
                ResidualBars.Of("phases-picture", [new ComparedDesign(view.Name, view.Evaluation).Residuals with
                    {
                        Spread = hasCases ? Band(view.Result) : [],
                    },
                    .. others.Select(other => other.Residuals)], largest),
                PhasesSection.PictureNote)));
    }

    /// <summary>Between which 8 of 10 cases lie in each phase; NaN for a design whose cases were not computed.</summary>
    private static IReadOnlyList<(double Low, double High)> Band(StudyResult result) => result.Uncertainty is { Bars.Count: > 0 } sure
        ? [.. sure.Sample.Phases.Select(phase => (phase.Residual.Tenth, phase.Residual.NineTenths))]
        : [.. result.Study.Mission.Select(_ => (double.NaN, double.NaN))];

    /// <summary>The same design with other yaw leverages and riser couplings.</summary>
    public static XElement? Wing(PageContent content)
    {
        if (!content.IsFeasible || WingSection.Of(content.Result).ToList() is not [var compared, .. var best])
            return null;
        return Html.Section(
            "wing",
            compared.Title,
            content.Binder!.Bind(view => Html.SectionBody(WingSection.Of(view.Result).First())),
            best is [var other] ? Html.Heading(other.Title) : null,
            best is [var lines] ? Html.List(lines.Lines) : null,
            Html.Paragraph(Cautions.WingUncertainty));
    }

    /// <summary>The design rounded to what can be built, where its factors are continuous.</summary>
    public static XElement? Rounding(PageContent content) =>
        content is { IsFeasible: true, Binder: { } binder }
            && RoundingSection.Of(content.Result, content.Result.Chosen!).FirstOrDefault() is { } section
            ? Html.Section("rounded", section.Title, binder.Bind(view =>
                Html.SectionBody(RoundingSection.Of(content.Result, view.Evaluation).First())))
            : null;

    /// <summary>What to see on the ground before any flight.</summary>
    public static IEnumerable<XElement> GroundChecks(PageContent content)
    {
        if (content.Binder is not { } binder || !content.IsFeasible)
            yield break;
        var (study, chosen) = (content.Study, content.Result.Chosen!);
        yield return Html.Section(
            "hang-check",
            GroundChecksSection.HangCheck(study, chosen.Geometry).Title,
            binder.Bind(view => Html.Block("hang", Html.Table(GroundChecksSection.Scales(study, view.Evaluation.Geometry)),
                Html.SectionBody(GroundChecksSection.HangCheck(study, view.Evaluation.Geometry)))));
        yield return Html.Section(
            "before-flight",
            GroundChecksSection.BeforeFlight(study, chosen).Title,
            binder.Bind(view => Html.SectionBody(GroundChecksSection.BeforeFlight(study, view.Evaluation))),
            new XElement("p", "The ", new XElement("a", new XAttribute("href", "#card"), "test card"),
                " covers these steps in detail, with expected figures and space for notes."));
    }

    /// <summary>Where on the throttle the design is balanced.</summary>
    public static XElement? Band(PageContent content)
    {
        if (content.Binder is not { } binder || !content.IsFeasible)
            return null;
        var plot = RpmPlot.Plot([.. binder.Views.Select(view => view.OverRpm)]);
        var key = PlotLegend.Of("band-key", "Key to torque against propeller speed",
        [
            (Svg.Line("line-1", 0, 8, 34, 8), "residual torque"),
            (Svg.Line("line-2", 0, 8, 34, 8), "propeller torque"),
            (Svg.Path("band", "M2 2H32V14H2Z"), "balanced band"),
            (PlotMarker.At("ranked", PlotMarker.Diamond, 17, 8), "phase under power"),
        ]);
        return Html.Section(
            "band",
            BandSection.Of(content.Result, content.Result.Chosen!).Title,
            binder.Bind(view => Html.SectionBody(BandSection.Of(view.Result, view.Evaluation))),
            key,
            binder.Bind(view => Html.Figure(RpmPlot.Of(plot, view.OverRpm),
                BandSection.PictureNotes(content.Study.Machine, view.Evaluation))));
    }

    /// <summary>What the design gives up elsewhere: with the engine off, against others, at its limits.</summary>
    public static IEnumerable<XElement> Cost(PageContent content)
    {
        if (content.Binder is not { } binder)
            yield break;
        if (content.IsFeasible)
        {
            var best = CostSection.Best(content.Result);
            yield return Html.Section(
                "cost",
                CostSection.Of(content.Result, content.Result.Chosen!).Title,
                Html.Heading("The price of a fixed offset: with the engine off"),
                binder.Bind(view => Html.List(CostSection.EngineOff(content.Result, view.Evaluation))),
                Html.Paragraph(
                    "A fixed offset is correct at one power setting only. With the engine off nothing opposes it, and it turns the wing "
                        + "the other way."),
                Html.Heading("Response by response"),
                binder.Bind(view => Html.SectionBody(CostSection.Of(view.Result, view.Evaluation, best))));
        }

        yield return Html.Section("limits", LimitsSection.Of(content.Result).Title,
        [
            binder.Bind(view => Html.SectionBody(LimitsSection.Of(view.Result))),
            .. BuildErrorsSection.Of(content.Result).SelectMany(section => (XElement[])[Html.Heading(section.Title),
                binder.Bind(view => Html.SectionBody(BuildErrorsSection.Of(view.Result).First()))]),
            .. content.IsFeasible ? SpinUpSection.Of(content.Result, content.Result.Chosen!).SelectMany(section => (XElement[])
                [Html.Heading(section.Title),
                    binder.Bind(view => Html.SectionBody(SpinUpSection.Of(view.Result, view.Evaluation).First()))]) : [],
        ]);
    }
}
