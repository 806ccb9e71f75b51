using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Web.State;

/// <summary>The design looked at while it is moved: every move snaps to what the study can build.</summary>
/// <param name="session">Holds the design.</param>
public sealed class Bench(Session session)
{
    private const double FreeMetres = 0.001, FreeReachMetres = 0.05;

    private FrameGeometry from;

    /// <summary>Remembers the design as it is when something takes hold of it.</summary>
    public void Grab() => from = session.Hand;

    /// <summary>Moves inputs by so much since <see cref="Grab"/>, m or rad.</summary>
    public void Drag(params (GeometryInput Input, double By)[] moves) =>
        session.Look(moves.Aggregate(session.Hand, (design, move) =>
            design.With(move.Input, Snapped(move.Input, from[move.Input] + move.By))), isDragged: true);

    /// <summary>Moves an input by steps.</summary>
    public void Step(GeometryInput input, int steps)
    {
        if (steps != 0)
            Put(input, session.Hand[input] + steps * StepOf(input));
    }

    /// <summary>Puts an input where it is wanted, or as near as can be built; kept at once unless it is being dragged.</summary>
    public void Put(GeometryInput input, double si, bool isDragged = false)
    {
        var moved = session.Hand.With(input, Snapped(input, si));
        session.Look(HolePattern.Decides(input) && session.Study!.Holes is { } holes ? holes.Nearest(moved) : moved, isDragged);
    }

    /// <summary>Keeps the design.</summary>
    public void Release() => session.Look(session.Hand);

    /// <summary>From where to where an input goes, m or rad.</summary>
    public (double Low, double High) Range(GeometryInput input)
    {
        var factor = Factor(input);
        return factor.IsSwept ? (factor.LevelsSi[0], factor.LevelsSi[^1])
            : (factor.LevelsSi[0] - FreeReachMetres, factor.LevelsSi[0] + FreeReachMetres);
    }

    /// <summary>The step from one place to the next, m or rad.</summary>
    public double StepOf(GeometryInput input) => Factor(input) is { IsSwept: true, IsContinuous: false } factor
        ? factor.RangeSi / (factor.LevelsSi.Count - 1) : input == GeometryInput.ThrustLineAngle ? Math.PI / 360 : FreeMetres;

    /// <summary>The factor of an input.</summary>
    public StudyFactor Factor(GeometryInput input) => session.Study!.Factor(input);

    /// <summary>What the command check says of an input's range.</summary>
    public FieldFindings Findings(GeometryInput input) => FieldFindings.Of(session, $"factors.{input.Name}");

    private double Snapped(GeometryInput input, double si)
    {
        var (low, high) = Range(input);
        var inside = Math.Clamp(si, low, high);
        return Factor(input) is { IsSwept: true, IsContinuous: false } factor
            ? factor.LevelsSi.MinBy(level => Math.Abs(level - inside))
            : Math.Clamp(Math.Round(inside / StepOf(input)) * StepOf(input), low, high);
    }
}
