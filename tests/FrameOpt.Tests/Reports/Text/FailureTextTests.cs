using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;
using FrameOpt.Reports.Text;
using FrameOpt.Tests.Model.Mission;

namespace FrameOpt.Tests.Reports.Text;

/// <summary>Each reason why a design cannot fly, provoked by a small machine worked by hand: 94 kg hung 150 mm below the hang points
/// (921.825 N), 100 kg all up, 10 m/s at sea level, glide ratio 5 (thrust in level flight 196.133 N), no drag, hub at the hang
/// line.</summary>
public class FailureTextTests
{
    [Fact]
    public void Hand_machine_flies() => Assert.Null(Failure(new HandMachine()));

    // Q = 0.05 x 1.225 x 30.6667² x 1.3⁵ / 2 pi = 34.04 N·m; the engine gives 10 x 2.5 x 0.96.
    [Fact]
    public void Engine_too_weak_says_needed_and_given_torque() => Assert.Equal(
        "cruise: more torque is needed than the engine gives (needs 34.0 N·m at the propeller at 1,840 rpm (engine 4,600 rpm), "
            + "the engine gives 24.0 N·m)",
        Failure(new HandMachine { Power = new PhasePower.AtRpm(1840), Engine = Engine(4000, 8500, 10) }));

    [Fact]
    public void Rpm_outside_the_engine_says_what_its_table_covers() => Assert.Equal(
        "cruise: the engine's table does not cover this rpm "
            + "(needs 1,840 rpm (engine 4,600 rpm) at the propeller; "
            + "the engine's table covers 2,000 to 3,400 rpm (engine 5,000 to 8,500 rpm) there)",
        Failure(new HandMachine { Power = new PhasePower.AtRpm(1840), Engine = Engine(5000, 8500, 20) }));

    // J = 10 / (30.6667 x 1.3) = 0.251.
    [Fact]
    public void Rpm_outside_the_propeller_says_what_its_curve_covers() => Assert.Equal(
        "cruise: the propeller's table does not cover this speed and rpm "
            + "(1,840 rpm at 10.0 m/s; the propeller's curve covers advance ratio 0.3 to 0.6)",
        Failure(new HandMachine { Power = new PhasePower.AtRpm(1840), Rows = [new(0.3, 0.07, 0.05), new(0.6, 0.04, 0.05)] }));

    // At J = 0.5 the propeller gives 0.05 x 1.225 x 100 x 1.69 / 0.25 = 41 N, and less beyond.
    [Fact]
    public void More_thrust_than_the_propeller_covers_is_a_reason() => Assert.Equal(
        "cruise: more thrust is needed than the propeller's table covers "
            + "(196 N at 10.0 m/s; the propeller's curve covers advance ratio 0.5 to 0.6)",
        Failure(new HandMachine { Rows = [new(0.5, 0.05, 0.05), new(0.6, 0.04, 0.05)] }));

    // At J = 0.2 the propeller gives 0.08 x 1.225 x 100 x 1.69 / 0.04 = 414 N, and more below.
    [Fact]
    public void Less_thrust_than_the_propeller_covers_is_a_reason() => Assert.Equal(
        "cruise: less thrust is needed than the propeller's table covers "
            + "(196 N at 10.0 m/s; the propeller's curve covers advance ratio 0 to 0.2)",
        Failure(new HandMachine { Rows = [new(0, 0.1, 0.05), new(0.2, 0.08, 0.05)] }));

    // At 3400 rpm the propeller takes 34.04 x (3400/1840)² = 116.2 N·m; the engine gives 100 x 2.5 x 0.96 = 240 N·m.
    [Fact]
    public void Full_throttle_with_too_light_a_propeller_says_both_torques_at_the_last_speed() => Assert.Equal(
        "cruise: at full throttle the propeller takes less than the engine gives up to the end of the tables: "
            + "it is too light, or a table too short (at 3,400 rpm (engine 8,500 rpm) it takes 116.2 N·m, the engine gives 240.0 N·m; "
            + "the engine's table covers 1,600 to 3,400 rpm (engine 4,000 to 8,500 rpm) there; "
            + "the propeller's curve covers advance ratio 0 to 0.6)",
        Failure(new HandMachine { Power = new PhasePower.FullThrottle(), Engine = Engine(4000, 8500, 100) }));

    // At 1600 rpm the propeller takes 34.04 x (1600/1840)² = 25.7 N·m; the engine gives 10 x 2.5 x 0.96 = 24 N·m.
    [Fact]
    public void Full_throttle_with_too_weak_an_engine_says_both_torques_at_the_first_speed() => Assert.StartsWith(
        "cruise: at full throttle the propeller takes more than the engine gives from the beginning of the tables: the engine is too weak "
        + "(at 1,600 rpm (engine 4,000 rpm) it takes 25.7 N·m, the engine gives 24.0 N·m; ",
        Failure(new HandMachine { Power = new PhasePower.FullThrottle(), Engine = Engine(4000, 8500, 10) }));

    // J from 0.5 to 0.6 at 10 m/s is 923 to 769 rpm; the engine begins at 4000 / 2.5 = 1600 rpm.
    [Fact]
    public void Full_throttle_with_tables_apart_says_both_ranges() => Assert.Equal(
        "cruise: at full throttle the tables of propeller and engine have no speed in common "
            + "(10.0 m/s; the engine's table covers 1,600 to 3,400 rpm (engine 4,000 to 8,500 rpm) there; "
        + "the propeller's curve covers advance ratio 0.5 to 0.6)",
        Failure(new HandMachine
        {
            Power = new PhasePower.FullThrottle(),
            Engine = Engine(4000, 8500, 10),
            Rows = [new(0.5, 0.05, 0.05), new(0.6, 0.04, 0.05)]
        }));

    [Fact]
    public void Airspeed_outside_the_polar_is_a_reason_where_a_glide_ratio_is_needed()
    {
        var fast = new HandMachine { Speed = new FlightSpeed.AtAirspeed(20) };
        Assert.Equal(
            "cruise: the airspeed lies outside the wing's polar (20.0 m/s; the power must be full throttle, an rpm or engine off there)",
                Failure(fast));
        Assert.Null(Failure(fast with { Power = new PhasePower.EngineOff() }));
        Assert.Equal(
            "cruise: the airspeed lies outside the wing's polar (the polar covers fraction 0 to 1)",
            Failure(new HandMachine { Speed = new FlightSpeed.AtFraction(1.2), Power = new PhasePower.EngineOff() }));
    }

    // 196.133 N at 2 m below the hang line: 392 N·m; 921.825 N at 0.15 m: 138 N·m.
    [Fact]
    public void Thrust_far_from_the_hang_line_pitches_the_pilot_over() => Assert.Equal(
        "cruise: the thrust pitches the pilot over: no balance in pitch (pitching moment 392 N·m, the suspended weight can balance at "
            + "most 138 N·m)",
        Failure(new HandMachine { HubUp = -1.85 }));

    // Hang points below the centre of gravity: nothing else acts, so the body comes to rest upside down.
    [Fact]
    public void Body_hung_below_its_centre_of_gravity_turns_over() => Assert.Equal(
        "cruise: nothing holds the body upright under the hang points: it turns over (body pitch -180 deg at suspension height -30 mm)",
        Failure(new HandMachine { Power = new PhasePower.EngineOff(), Height = -0.030 }));

    // 2 m² of the same: 245 N·m/rad, more than the weight holds in pitch.
    [Fact]
    public void Much_drag_ahead_of_the_hang_line_turns_the_body_over() => Assert.StartsWith(
        "cruise: nothing holds the body upright",
        Failure(new HandMachine { Power = new PhasePower.EngineOff(), DragArea = 2, DragCentre = new FramePoint(2, 0, 0.15) }));

    // Tilted 82 deg upward through the hang line, level flight takes 196.133 tan 82 = 1395.56 N upward: 921.83 - 1395.56.
    [Fact]
    public void Thrust_that_carries_all_the_weight_leaves_no_riser_load() => Assert.Equal(
        "cruise: the thrust carries all the weight: no load is left in the risers (vertical load -474 N)",
        Failure(new HandMachine { Tilt = 82 * Math.PI / 180 }));

    [Fact]
    public void Hang_points_as_far_apart_as_the_lines_are_a_reason() => Assert.Equal(
        "cruise: the hang points are as far apart as the lines of the wing (spacing 440 mm, line spread 400 mm)",
        Failure(new HandMachine { Coupling = new RiserCoupling.FromLines(), LineSpread = 0.4 }));

    // Drag 61.25 N two metres ahead of the hang line turns the body out of the wind: 122.5 N·m/rad against the risers' 55 in yaw; in pitch
    // the weight's 138 still hold it.
    [Fact]
    public void Drag_ahead_of_the_hang_line_makes_the_body_unstable() => Assert.Equal(
        "cruise: the body is not stable in roll and yaw under the hang points "
            + "(righting moment 138 N·m for each radian of roll at suspension height 150 mm)",
        Failure(new HandMachine { Power = new PhasePower.EngineOff(), DragArea = 1, DragCentre = new FramePoint(2, 0, 0.15) }));

    // Drag 61.25 N, 2 m to the right: 122.5 N·m. Risers: hypot(921.825, 61.25) N x 0.44 x 3.8 / 28 = 55.2 N·m; leaning back by
    // atan(61.25 / 921.825) = 3.80 deg and held from rolling against the wing, the body takes N cos(eps) K / (K + W Z_c sin²(eps)) = 120.9
    // N·m.
    [Fact]
    public void Drag_far_to_one_side_twists_the_risers() => Assert.Equal(
        "cruise: the risers twist (yaw moment 120.9 N·m, the two risers hold 55.2 N·m)",
        Failure(new HandMachine
        {
            Power = new PhasePower.EngineOff(),
            DragArea = 1,
            DragCentre = new FramePoint(0, 2, 0.15),
            Coupling = new RiserCoupling.Measured(1e9, 0.44),
        }));

    // 921.825 N x 0.3 m = 276.5 N·m; half the load at 0.44 m: 202.8 N·m.
    [Fact]
    public void Offset_beyond_half_the_spacing_leaves_a_riser_slack() => Assert.Equal(
        "cruise: a riser goes slack (roll moment 276.5 N·m, the load holds 202.8 N·m)",
        Failure(new HandMachine { Power = new PhasePower.EngineOff(), Offset = 0.3, Coupling = new RiserCoupling.Measured(1e9, 0.44) }));

    [Fact]
    public void Failure_without_figures_names_phase_and_kind()
    {
        var phases = new HandMachine().Mission.Phases;
        Assert.Equal("cruise: a riser goes slack", FailureText.Kind(phases, new FlightFailure(FailureKind.SlackRiser, 0)));
        Assert.Equal(
            Enum.GetValues<FailureKind>().Length,
            Enum.GetValues<FailureKind>().Select(kind => FailureText.Kind(phases, new FlightFailure(kind, 0))).Distinct().Count());
    }

    private static Engine Engine(double from, double to, double torque) => new(new LinearTable([from, to], [torque, torque]), 2.5, 0.96);

    private static string? Failure(HandMachine setup) => setup.Design.Failure is { } failure ? FailureText.Describe(failure) : null;
}
