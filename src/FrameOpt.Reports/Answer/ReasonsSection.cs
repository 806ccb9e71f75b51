using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>Why the design works, where a builder would wonder.</summary>
internal static class ReasonsSection
{
    /// <summary>Two loads in newtons that differ by less are called the same.</summary>
    private const double SameNewtons = 10;

    /// <summary>The shim is told for this distance between the bolts of the mount, m.</summary>
    private const double BoltDistance = 0.1;

    /// <summary>The section; none when nothing puzzles.</summary>
    public static IEnumerable<AnswerSection> Of(Study study, DesignEvaluation design)
    {
        string[] lines = [.. ScalesAndFlight(study, design), .. ThrustLine(study, design), .. Shim(design.Geometry)];
        if (lines.Length > 0)
            yield return new AnswerSection("Why it works", lines);
    }

    /// <summary>Straps on a beam keep the frame upright, so the scales show all of the offset; a wing lets the body roll.</summary>
    private static IEnumerable<string> ScalesAndFlight(Study study, DesignEvaluation design)
    {
        var scales = HangCheck.Of(study.Machine, design.Geometry).DifferenceNewtons;
        foreach (var phase in design.Phases.Where(phase => phase.Phase.Power is PhasePower.EngineOff).Take(1))
        {
            var flight = phase[PhaseQuantity.LoadDifference];
            if (Math.Abs(scales - flight) >= SameNewtons)
            {
                yield return $"The scales show {Loaded(scales)}, the risers in {phase.Phase.Name} {Loaded(flight)}. Both are right. "
                    + $"Two equal straps on a beam keep the {Level(design.Geometry)} level, so the scales show the whole effect of the "
                    + "offset. Under the wing "
                    + "the frame "
                    + $"rolls ({NumberFormat.Text(Math.Abs(phase[PhaseQuantity.BodyRoll]), "deg")} to the "
                    + $"{SideText.Side(phase[PhaseQuantity.BodyRoll])}) until its weight, hanging back towards the middle, takes part of "
                    + "it.";
            }
        }
    }

    private static string Level(FrameGeometry geometry) =>
        geometry.HangHeightDifferenceMetres == 0 && geometry.StrapDifferenceMetres == 0 ? "frame" : "ends of the straps";

    /// <summary>The thrust acts at the hub, behind the hang line, and so turns the frame about it.</summary>
    private static IEnumerable<string> ThrustLine(Study study, DesignEvaluation design)
    {
        var geometry = design.Geometry;
        var behind = geometry.HangLineForwardMetres - geometry.HubForwardMetres;
        if (geometry.AngleRadians == 0 || behind <= 0)
            yield break;
        var points = SideText.Side(geometry.AngleRadians);
        yield return $"The thrust line points to the {points} and yet turns the nose to the {SideText.Side(-geometry.AngleRadians)}: "
            + $"the hub lies {study.LengthUnit.Text(behind)} behind the hang line, and a push to the {points} back there swings the nose "
            + "the other way, as a rudder does.";
    }

    /// <summary>How thick a shim gives the angle of the thrust line; nothing where it has none.</summary>
    internal static IEnumerable<string> Shim(FrameGeometry geometry)
    {
        if (geometry.AngleRadians == 0)
            yield break;
        var (sine, cosine) = Elementary.SinCos(Math.Abs(geometry.AngleRadians));
        var perBoltDistance = 1000 * BoltDistance * sine / cosine;
        yield return $"To build the angle with a shim: {NumberFormat.Text(perBoltDistance, "mm")} for each 100 mm between the left and the "
            + "right bolts of the engine mount (distance x tan of the angle). Check it with a straight edge along the shaft.";
    }

    private static string Loaded(double newtons) => Math.Abs(newtons) < 0.5 ? "the same on both sides"
        : $"{NumberFormat.Load(Math.Abs(newtons))} more on the {SideText.Side(newtons)}";
}
