using System.Xml.Linq;
using FrameOpt.Analysis;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Graphics;

/// <summary>Lines through one design along each factor of a plan: the model, and the surface that stands for it.</summary>
/// <param name="Plan">With its factors.</param>
/// <param name="Through">The design.</param>
/// <param name="Lines">For each factor the model along it, from the low end of the plan's cube to the high one.</param>
internal sealed record ModelAndFitPlot(StudyPlan Plan, FrameGeometry Through, IReadOnlyList<IReadOnlyList<DesignEvaluation>> Lines)
{
    private const int Steps = 20;
    private const double PanelHeight = 118;
    private const double Top = 36;
    private const double Gap = 10;
    private const double Left = 44;

    /// <summary>The lines of a plan.</summary>
    /// <param name="plan">With its factors.</param>
    /// <param name="mission">The model.</param>
    /// <param name="through">The design; null for the middle of the plan.</param>
    public static ModelAndFitPlot Of(StudyPlan plan, MissionModel mission, FrameGeometry? through)
    {
        var at = through ?? plan.Factors.Index().Aggregate(plan.Designs[0], (design, factor) =>
            design.With(factor.Item.Input, plan.Scales[factor.Index].Natural(0)));
        return new ModelAndFitPlot(plan, at, [.. plan.Factors.Select((factor, f) => (IReadOnlyList<DesignEvaluation>)[.. Enumerable
            .Range(0, Steps + 1).Select(i => mission.Evaluate(at.With(factor.Input, plan.Scales[f].Natural(Coded(i)))))])]);
    }

    /// <summary>One panel for each factor, all with the same vertical axis.</summary>
    /// <param name="response">Of the model.</param>
    /// <param name="fit">Of the response.</param>
    /// <param name="id">Of the picture.</param>
    public XElement Picture(Response response, RegressionFit fit, string id)
    {
        var models = Lines.Select(line => line.Select(design => design.Failure is null ? design[response] : double.NaN).ToArray()).ToList();
        var fits = Plan.Factors.Select((_, f) => Enumerable.Range(0, Steps + 1).Select(i => fit.Predict(At(f, Coded(i)))).ToArray())
            .ToList();
        var axis = PlotAxis.Spanning("", models.Concat(fits).SelectMany(line => line), steps: 3);
        var height = Top + (((Plan.Factors.Count + 1) / 2) * (PanelHeight + 34));
        var title = PlanLabels.WithUnit(response);
        return Svg.Picture(id, Plot.Width, height, $"{title}: model and fitted surface along each factor",
            string.Join(" ", Plan.Factors.Select((factor, f) => $"Along {PlanLabels.Name(factor)} they differ by up to "
                + $"{PlanLabels.FourDigits(Largest(models[f], fits[f]), response.Unit)}.")),
            [
                Svg.Text("axis", 4, 12, "start", title),
                Svg.Line("line-1", 8, 24, 44, 24), Svg.Text("axis", 50, 28, "start", "model"),
                Svg.Line("line-2", 100, 24, 136, 24), Svg.Text("axis", 142, 28, "start", "fitted surface"),
                .. Plan.Factors.SelectMany((_, f) => Panel(f, axis, models[f], fits[f])),
            ]);
    }

    private IEnumerable<XElement> Panel(int f, PlotAxis axis, double[] model, double[] fit)
    {
        const double width = (Plot.Width - Left - Gap - 8) / 2;
        var (left, top) = (Left + ((f % 2) * (width + Gap)), Top + (f / 2 * (PanelHeight + 34)));
        double X(double coded) => left + ((coded + 1) / 2 * width);
        double Y(double value) => top + ((axis.To - value) / (axis.To - axis.From) * PanelHeight);
        foreach (var tick in axis.Ticks)
        {
            yield return Svg.Line("grid", left, Y(tick), left + width, Y(tick));
            if (f % 2 == 0)
                yield return Svg.Text("tick", left - 5, Y(tick) + 3.5, "end", axis.Text(tick));
        }

        yield return Svg.Rectangle("frame", left, top, width, PanelHeight);
        if (Math.Clamp(OwnCoded(f), -1, 1) == OwnCoded(f))
            yield return Svg.Line("pointed", X(OwnCoded(f)), top, X(OwnCoded(f)), top + PanelHeight);
        yield return Svg.Curve("line-1", model.Select((value, i) => (X(Coded(i)), Y(value))));
        yield return Svg.Curve("line-2", fit.Select((value, i) => (X(Coded(i)), Y(value))));
        yield return Svg.Text("tick", left, top + PanelHeight + 12, "start", End(f, -1));
        yield return Svg.Text("tick", left + width, top + PanelHeight + 12, "end", End(f, 1));
        yield return Svg.Text("axis", left + (width / 2), top + PanelHeight + 24, "middle", PlanLabels.Name(Plan.Factors[f]));
    }

    private static double Coded(int step) => (2.0 * step / Steps) - 1;

    private double OwnCoded(int f) => Plan.Scales[f].Coded(Through[Plan.Factors[f].Input]);

    private double[] At(int moved, double coded) => [.. Plan.Factors.Select((_, f) => f == moved ? coded : OwnCoded(f))];

    private string End(int f, double coded) =>
        $"{PlainNumber.Text(PlanLabels.Natural(Plan, f, coded))} {Plan.Factors[f].Unit.Symbol}";

    private static double Largest(double[] model, double[] fit) =>
        model.Zip(fit, (a, b) => Math.Abs(a - b)).Where(double.IsFinite).DefaultIfEmpty(0).Max();
}
