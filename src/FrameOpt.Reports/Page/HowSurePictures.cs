using System.Xml.Linq;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Page;

/// <summary>What each uncertain number does alone, drawn: a picture for each response that matters.</summary>
public static class HowSurePictures
{
    /// <summary>Numbers in a picture, and in the table beside them.</summary>
    public const int MostRows = 8;

    /// <summary>A bar shorter than this share of the longest in its picture says nothing.</summary>
    private const double ShortestBar = 0.02;

    /// <summary>The pictures of a design; their style comes from classes.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="chosen">The design as drawn.</param>
    /// <param name="bars">Of that design, at least one.</param>
    public static IEnumerable<XElement> Of(Study study, DesignEvaluation chosen, IReadOnlyList<NoiseBar> bars) =>
        Panels(study, chosen, bars).Select((panel, i) => NoiseBars.Of(FormattableString.Invariant($"how-sure-{i + 1}"), panel));

    /// <summary>The residual of each settled phase, all at one scale, then the effort and what else has a limit.</summary>
    private static IEnumerable<NoisePanel> Panels(Study study, DesignEvaluation chosen, IReadOnlyList<NoiseBar> bars)
    {
        var residuals = study.Mission.Index().Where(phase => phase.Item.IsSettled)
            .Select(phase => (Response)new Response.OfPhase(PhaseQuantity.Residual, phase.Index, phase.Item.Name)).ToList();
        var scale = residuals.Max(residual => Scale(chosen, bars, residual));
        foreach (var residual in residuals)
            yield return Panel(study, chosen, bars, residual, scale);
        var others = study.Limits.Select(limit => limit.Response).Where(response => !response.IsOverCases && !residuals.Contains(response))
            .Prepend(new Response.OfMission(MissionQuantity.EffortWorst)).Distinct();
        foreach (var response in others)
            yield return Panel(study, chosen, bars, response, Scale(chosen, bars, response));
    }

    private static NoisePanel Panel(Study study, DesignEvaluation chosen, IReadOnlyList<NoiseBar> bars, Response response, double scale)
    {
        var isSided = response.Entry.Sign == ResponseSign.Side;
        var asDrawn = chosen[response];
        var moving = bars.Select(bar => (Bar: bar, Moves: Moves(chosen, bar, response))).OrderByDescending(item => item.Moves)
            .Where(item => item.Moves > ShortestBar * scale).Take(MostRows);
        return new NoisePanel(
            StudyText.Capitalised(StudyText.Title(response, false)),
            response.Unit.Length > 0 ? $"[{response.Unit}]" : "",
            isSided,
            asDrawn,
            scale,
            [.. study.Limits.Where(limit => limit.Response == response && !limit.Magnitude)
                .SelectMany(limit => new[] { limit.AtLeast, limit.AtMost }).OfType<double>()],
            [.. moving.Select(item => new NoiseRow(item.Bar.Source.Title, NoiseText.Ends(
                item.Bar.Source, item.Bar.LowDeviation, item.Bar.HighDeviation), Value(item.Bar.Low, response),
                Value(item.Bar.High, response)))],
            value => isSided && response.Unit == "N·m" ? SideText.Moment(value) : NumberFormat.Text(value, response.Unit));
    }

    /// <summary>How far the numbers move a response; 1 where none does.</summary>
    private static double Scale(DesignEvaluation chosen, IReadOnlyList<NoiseBar> bars, Response response)
    {
        var longest = bars.SelectMany(bar => new[] { bar.Low, bar.High })
            .Select(design => Math.Abs(Value(design, response) - chosen[response]))
            .Where(double.IsFinite).DefaultIfEmpty(0).Max();
        return longest > 0 ? longest : 1;
    }

    private static double Moves(DesignEvaluation chosen, NoiseBar bar, Response response)
    {
        double One(DesignEvaluation design) => Value(design, response) is var value && double.IsNaN(value) ? double.PositiveInfinity
            : Math.Abs(value - chosen[response]);
        return Math.Max(One(bar.Low), One(bar.High));
    }

    private static double Value(DesignEvaluation design, Response response) => design.Failure is null ? design[response] : double.NaN;
}
