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
        session.Look(moves.Aggregate(session.Hand, (design, move) => Moved(design, move.Input, from[move.Input] + move.By)),
            isDragged: true);

    /// <summary>Moves the hole of one side outwards since <see cref="Grab"/>: both sides alike, or from hole to hole where the study has
    /// holes.</summary>
    /// <param name="side">-1 for the pilot's left, 1 for the right.</param>
    /// <param name="outward">m.</param>
    public void DragHole(int side, double outward)
    {
        if (session.Study!.Holes is not { } holes)
            Drag((GeometryInput.HangPointSpacing, 2 * outward));
        else
            session.Look(side < 0
                ? HolePattern.Put(session.Hand, holes.Left.Nearest(from.LeftMetres + outward), session.Hand.RightMetres)
                : HolePattern.Put(session.Hand, session.Hand.LeftMetres, holes.Right.Nearest(from.RightMetres + outward)), isDragged: true);
    }

    /// <summary>Moves an input by steps.</summary>
    public void Step(GeometryInput input, int steps)
    {
        if (steps != 0)
            Put(input, session.Hand[input] + steps * StepOf(input));
    }

    /// <summary>Puts an input where it is wanted, or as near as can be built; kept at once unless it is being dragged.</summary>
    public void Put(GeometryInput input, double si, bool isDragged = false) =>
        session.Look(Moved(session.Hand, input, si), isDragged);

    private FrameGeometry Moved(FrameGeometry design, GeometryInput input, double si)
    {
        var moved = design.With(input, Snapped(input, si));
        return HolePattern.Decides(input) && session.Study!.Holes is { } holes ? Pair(holes, moved, input) : moved;
    }

    /// <summary>The pair of holes that comes nearest in the input that is moved, and of those the one that changes least else.</summary>
    private static FrameGeometry Pair(HolePattern holes, FrameGeometry moved, GeometryInput input) =>
        (from left in holes.Left.Places
         from right in holes.Right.Places
         select HolePattern.Put(moved, left, right))
        .OrderBy(pair => Math.Round(Math.Abs(pair[input] - moved[input]), 9))
        .ThenBy(pair => Math.Abs(pair.OffsetMetres - moved.OffsetMetres) + Math.Abs(pair.SpacingMetres - moved.SpacingMetres)).First();

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
