using FrameOpt.Model.Balance;
using FrameOpt.Model.Propulsion;
using FrameOpt.Numerics;

namespace FrameOpt.Model.Mission;

/// <summary>The mission over a row of designs that differ in lateral offset only: everything the row shares is computed once,
/// and what the last row already computed is kept. For one thread at a time.</summary>
public sealed class MissionRow
{
    private readonly Phase[] phases;
    private readonly PhaseConditions[] conditions;
    private readonly OperatingPointSolver[] operating;
    private readonly OperatingPoint[] points;
    private readonly SuspendedBody[] bodies;
    private readonly RollYawBalance[] balances;
    private FrameGeometry? last;
    private ThrustDirection thrust;
    private FlightFailure lastFailure;
    private double? pitchSwing;

    /// <summary>A row of a mission, not yet prepared.</summary>
    public MissionRow(MissionModel mission)
    {
        Mission = mission;
        (phases, conditions, operating) = mission.Arrays;
        points = new OperatingPoint[phases.Length];
        bodies = new SuspendedBody[phases.Length];
        balances = new RollYawBalance[phases.Length];
    }

    /// <summary>The model.</summary>
    public MissionModel Mission { get; }

    /// <summary>The geometry the row was prepared for; its offset counts where one design was.</summary>
    public FrameGeometry Geometry => last ?? throw new InvalidOperationException("prepare the row first");

    /// <summary>The mission's phases.</summary>
    public ReadOnlySpan<Phase> Phases => phases;

    /// <summary>What each phase fixes before any design is chosen.</summary>
    public ReadOnlySpan<PhaseConditions> Conditions => conditions;

    /// <summary>The operating point of each phase.</summary>
    public ReadOnlySpan<OperatingPoint> Points => points;

    /// <summary>Pitch, riser load and moments of each phase.</summary>
    public ReadOnlySpan<SuspendedBody> Bodies => bodies;

    /// <summary>What the risers hold in each phase.</summary>
    public ReadOnlySpan<RollYawBalance> Balances => balances;

    /// <summary>Largest less smallest theta of all phases, rad: the same for every spacing and offset.</summary>
    public double PitchSwing
    {
        get
        {
            if (pitchSwing is { } known)
                return known;
            double lowest = double.PositiveInfinity, highest = double.NegativeInfinity;
            foreach (ref readonly var body in bodies.AsSpan())
            {
                var theta = body.Pitch.Radians;
                lowest = Math.Min(lowest, theta);
                highest = Math.Max(highest, theta);
            }

            pitchSwing = highest - lowest;
            return highest - lowest;
        }
    }

    /// <summary>Computes what all designs of the row share.</summary>
    /// <param name="geometry">The design; its offset is not read.</param>
    /// <returns>The first failure that every design of the row has, or none.</returns>
    public FlightFailure Prepare(in FrameGeometry geometry)
    {
        var from = last is { } old ? FactorCatalogue.FirstDifference(old, geometry) : EvaluationStage.OperatingPoint;
        last = geometry;
        if (from == EvaluationStage.OperatingPoint)
            thrust = ThrustDirection.Of(geometry);
        if (from < EvaluationStage.Offset)
            lastFailure = Compute(geometry, from);
        return lastFailure;
    }

    /// <summary>Computes one design at its own offset.</summary>
    /// <returns>Why it cannot fly, or none.</returns>
    public FlightFailure PrepareDesign(in FrameGeometry design)
    {
        var failure = Prepare(design);
        if (failure.Kind != FailureKind.None)
            return failure;
        ReadOnlySpan<double> offset = [design.OffsetMetres];
        Span<ushort> code = stackalloc ushort[1];
        FindFailures(offset, code);
        return FlightFailure.FromCode(code[0]);
    }

    /// <summary>Finds the designs of the row that cannot fly, phase by phase.</summary>
    /// <param name="offsets">Lateral offsets in m, increasing.</param>
    /// <param name="codes">Receives the <see cref="FlightFailure.Code"/> of each, 0 for those that fly.</param>
    public void FindFailures(ReadOnlySpan<double> offsets, Span<ushort> codes)
    {
        codes.Clear();
        var halfSpacing = Geometry.SpacingMetres / 2;
        for (var p = 0; p < balances.Length; p++)
        {
            var yaw = balances[p].WingYawMoment;
            var roll = balances[p].WingRollMoment;
            var mostYaw = balances[p].YawStiffness;
            var mostRoll = bodies[p].Load.Newtons * halfSpacing;

            // The magnitude of a linear function is largest at an end of the row: when both ends hold, all do.
            if (StaysWithin(yaw, mostYaw, offsets) && StaysWithin(roll, mostRoll, offsets))
                continue;
            for (var i = 0; i < offsets.Length; i++)
            {
                if (codes[i] != 0)
                    continue;
                if (Math.Abs(yaw.At(offsets[i])) > mostYaw)
                    codes[i] = new FlightFailure(FailureKind.RiserTwist, p).Code;
                else if (Math.Abs(roll.At(offsets[i])) > mostRoll)
                    codes[i] = new FlightFailure(FailureKind.SlackRiser, p).Code;
            }
        }
    }

    private static bool StaysWithin(LinearFunction line, double most, ReadOnlySpan<double> offsets) =>
        Math.Abs(line.At(offsets[0])) <= most && Math.Abs(line.At(offsets[^1])) <= most;

    /// <summary>Recomputes every phase from one stage on.</summary>
    private FlightFailure Compute(in FrameGeometry geometry, EvaluationStage from)
    {
        if (from <= EvaluationStage.Height)
            pitchSwing = null;
        var rollMetres = RiserStiffness.RollMetres(Mission.Wing, geometry.SpacingMetres);
        var yawMetres = RiserStiffness.YawMetres(Mission.Wing, geometry.SpacingMetres);
        var first = FlightFailure.None;
        for (var p = 0; p < points.Length; p++)
        {
            var failure = ComputePhase(p, geometry, from, rollMetres, yawMetres);
            if (failure != FailureKind.None && first.Kind == FailureKind.None)
                first = new FlightFailure(failure, p);
        }

        return first;
    }

    private FailureKind ComputePhase(int p, in FrameGeometry geometry, EvaluationStage from, double rollMetres, double yawMetres)
    {
        if (from == EvaluationStage.OperatingPoint)
            points[p] = operating[p].For(thrust);
        if (points[p].Failure != FailureKind.None)
            return points[p].Failure;
        if (from <= EvaluationStage.Height)
            bodies[p] = SuspendedBody.Of(Mission.Machine, phases[p], conditions[p], points[p], geometry, thrust);
        if (bodies[p].Failure != FailureKind.None)
            return bodies[p].Failure;
        balances[p] = RollYawBalance.Of(
            bodies[p], rollMetres, yawMetres, RestAttitude.Of(geometry, bodies[p].Pitch, bodies[p].Load));
        return balances[p].Failure;
    }
}
