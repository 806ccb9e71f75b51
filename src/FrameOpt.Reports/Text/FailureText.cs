using FrameOpt.Model;
using FrameOpt.Model.Mission;
using static System.FormattableString;

namespace FrameOpt.Reports.Text;

/// <summary>Failures in words.</summary>
public static class FailureText
{
    /// <summary>A failure without figures, for counting: "launch: a riser goes slack".</summary>
    /// <param name="phases">The mission.</param>
    /// <param name="failure">Kind and phase.</param>
    public static string Kind(IReadOnlyList<Phase> phases, FlightFailure failure) =>
        failure.Kind == FailureKind.SomeCase ? Short(failure.Kind) : $"{phases[failure.PhaseIndex].Name}: {Short(failure.Kind)}";

    /// <summary>A failure of one design with its figures.</summary>
    public static string Describe(DesignFailure failure) =>
        $"{failure.Phase.Name}: {Short(failure.Cause.Kind)} ({Figures(failure)})";

    private static string Short(FailureKind kind) => kind switch
    {
        FailureKind.SpeedOutsidePolar => "the airspeed lies outside the wing's polar",
        FailureKind.ThrustAbovePropeller => "more thrust is needed than the propeller's table covers",
        FailureKind.ThrustBelowPropeller => "less thrust is needed than the propeller's table covers",
        FailureKind.RpmOutsidePropeller => "the propeller's table does not cover this speed and rpm",
        FailureKind.RpmOutsideEngine => "the engine's table does not cover this rpm",
        FailureKind.EngineTooWeak => "more torque is needed than the engine gives",
        FailureKind.NoFullThrottleBalance => "at full throttle the tables of propeller and engine have no speed in common",
        FailureKind.PropellerTooLight =>
            "at full throttle the propeller takes less than the engine gives up to the end of the tables: "
                + "it is too light, or a table too short",
        FailureKind.PropellerTooHeavy =>
            "at full throttle the propeller takes more than the engine gives from the beginning of the tables: the engine is too weak",
        FailureKind.NoPitchEquilibrium => "the thrust pitches the pilot over: no balance in pitch",
        FailureKind.TurnedOver => "nothing holds the body upright under the hang points: it turns over",
        FailureKind.NoRiserLoad => "the thrust carries all the weight: no load is left in the risers",
        FailureKind.SpacingBeyondLines => "the hang points are as far apart as the lines of the wing",
        FailureKind.Unstable => "the body is not stable in roll and yaw under the hang points",
        FailureKind.RiserTwist => "the risers twist",
        FailureKind.SlackRiser => "a riser goes slack",
        FailureKind.SomeCase => "the design flies, but not in some of the cases of the noise, which an objective needs",
        _ => "flies",
    };

    private static string Figures(DesignFailure failure)
    {
        var (geometry, wing, conditions) = (failure.Geometry, failure.Mission.Wing, failure.Conditions);
        var (point, body, balance) = (failure.Point, failure.Body, failure.Balance);
        var polar = wing.Polar;
        return failure.Cause.Kind switch
        {
            FailureKind.SpeedOutsidePolar => double.IsNaN(conditions.AirspeedMetresPerSecond)
                ? Invariant($"the polar covers fraction {polar.AirspeedAtFraction.Smallest:0.##} to ")
                    + Invariant($"{polar.AirspeedAtFraction.Largest:0.##}")
                : Invariant($"{conditions.AirspeedMetresPerSecond:0.0} m/s; the power must be full throttle, an rpm or engine off there"),
            FailureKind.ThrustAbovePropeller or FailureKind.ThrustBelowPropeller =>
                Invariant($"{point.ThrustNewtons:0} N at {conditions.AirspeedMetresPerSecond:0.0} m/s; {PropellerRange(failure)}"),
            FailureKind.RpmOutsidePropeller =>
                Invariant($"{Rpm(failure)} at {conditions.AirspeedMetresPerSecond:0.0} m/s; {PropellerRange(failure)}"),
            FailureKind.RpmOutsideEngine => Invariant($"needs {Rpm(failure)} at the propeller; {EngineRange(failure)}"),
            FailureKind.EngineTooWeak =>
                Invariant($"needs {point.TorqueNewtonMetres:0.0} N·m at the propeller at {Rpm(failure)}, the engine gives ")
                + Invariant($"{point.AvailableTorqueNewtonMetres:0.0} N·m"),
            FailureKind.NoFullThrottleBalance =>
                Invariant($"{conditions.AirspeedMetresPerSecond:0.0} m/s; {EngineRange(failure)}; {PropellerRange(failure)}"),
            FailureKind.PropellerTooLight or FailureKind.PropellerTooHeavy =>
                Invariant($"at {Rpm(failure)} it takes {point.TorqueNewtonMetres:0.0} N·m, the engine gives ")
                + Invariant($"{point.AvailableTorqueNewtonMetres:0.0} N·m; {EngineRange(failure)}; {PropellerRange(failure)}"),
            FailureKind.NoPitchEquilibrium =>
                Invariant($"pitching moment {Math.Abs(body.Pitch.MomentNewtonMetres):0} N·m, the suspended weight can balance at most ")
                + Invariant($"{body.Pitch.CapacityNewtonMetres:0} N·m"),
            FailureKind.TurnedOver => Invariant(
                $"body pitch {body.Pitch.Radians * 180 / Math.PI:0} deg at suspension height {geometry.HeightMetres * 1000:0} mm"),
            FailureKind.NoRiserLoad => Invariant($"vertical load {body.Load.VerticalNewtons:0} N"),
            FailureKind.SpacingBeyondLines => Invariant(
                $"spacing {geometry.SpacingMetres * 1000:0} mm, line spread {wing.LineSpreadMetres * 1000:0} mm"),
            FailureKind.Unstable =>
                Invariant($"righting moment {body.Stiffness.PendulumNewtonMetres:0} N·m for each radian of roll at suspension ")
                + Invariant($"height {geometry.HeightMetres * 1000:0} mm"),
            FailureKind.RiserTwist =>
                Invariant($"yaw moment {Math.Abs(balance.WingYawMoment.At(geometry.OffsetMetres)):0.0} N·m, the two risers hold ")
                + Invariant($"{balance.YawStiffness:0.0} N·m"),
            FailureKind.SlackRiser =>
                Invariant($"roll moment {Math.Abs(balance.WingRollMoment.At(geometry.OffsetMetres)):0.0} N·m, the load holds ")
                + Invariant($"{body.Load.Newtons / 2 * geometry.SpacingMetres:0.0} N·m"),
            _ => "",
        };
    }

    private static string PropellerRange(DesignFailure failure)
    {
        var curve = failure.Mission.Machine.Propeller.Curve;
        return Invariant(
            $"the propeller's curve covers advance ratio {curve.SmallestAdvanceRatio:0.###} to {curve.LargestAdvanceRatio:0.###}");
    }

    private static string EngineRange(DesignFailure failure)
    {
        var engine = failure.Mission.Machine.Engine!;
        return $"the engine's table covers {RpmText.Range(
            failure.Mission.Machine, engine.CrankTorque.Smallest / engine.Reduction, engine.CrankTorque.Largest / engine.Reduction)} there";
    }

    private static string Rpm(DesignFailure failure) => RpmText.Of(failure.Mission.Machine, failure.Point.Rpm);
}
