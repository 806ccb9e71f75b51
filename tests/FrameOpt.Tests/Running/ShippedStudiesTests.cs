using System.Text.Json;
using FrameOpt.Tests.Model.Derivation;

namespace FrameOpt.Tests.Running;

/// <summary>Every study in studies/ runs. Its files are read back and held against mechanics and against one another.</summary>
public class ShippedStudiesTests
{
    private const string Rounding = "the same quantity by another formula";

    public static TheoryData<string> Studies => [.. Repository.Studies];

    // Counted by hand from the levels in the study file; where the README of the study states a number, it is the same.
    [Theory]
    [InlineData("custom-match", 9 * 61 * 21 * 3)]
    [InlineData("drilled-holes", 4 * 5 * 4)]
    [InlineData("fine-grid", 1_102_941)]
    [InlineData("fixed-spacing", 2_397)]
    [InlineData("full-and-empty", 915)]
    [InlineData("luggage-on-one-side", 2_856)]
    [InlineData("product-line", 1_395)]
    [InlineData("rationale", 9 * 13 * 21 * 5)]
    public void Every_design_of_the_grid_is_evaluated_and_counted_once(string study, int designs)
    {
        var run = ShippedRun.Of(study);
        var counts = run.Json.GetProperty("counts");
        Assert.True(run.Json.GetProperty("complete").GetBoolean());
        Assert.Equal(designs, counts.GetProperty("evaluated").GetInt32());
        Assert.Equal(designs, new[] { "failed", "outside_limits", "feasible" }.Sum(kind => counts.GetProperty(kind).GetInt32()));
    }

    [Theory]
    [MemberData(nameof(Studies))]
    public void No_design_of_the_front_beats_another_and_each_keeps_the_limits(string study)
    {
        var run = ShippedRun.Of(study);
        var front = Objectives(run);
        Assert.True(front.Count > 1);
        Assert.Equal(run.Json.GetProperty("front").GetProperty("rows").GetArrayLength(), front.Count);
        for (var i = 0; i < front.Count; i++)
        {
            for (var j = 0; j < front.Count; j++)
                Assert.False(Beats(front[i], front[j]), $"row {i + 1} beats row {j + 1}");
        }

        foreach (var limit in run.Study.GetProperty("limits").EnumerateArray())
        {
            var column = run.Column(limit.GetProperty("response").GetString()!);
            Assert.All(run.Front, row => Assert.InRange(row[column], Bound(limit, "at_least") ?? double.NegativeInfinity,
                Bound(limit, "at_most") ?? double.PositiveInfinity));
        }
    }

    // Zeleny 1973, compromise programming with exponent 2 (from memory): each objective scaled to 0 at its best and 1 at its worst on the
    // front, weights divided by their sum.
    [Theory]
    [MemberData(nameof(Studies))]
    public void Designs_are_ranked_by_their_weighted_distance_to_the_ideal_of_the_front(string study)
    {
        var run = ShippedRun.Of(study);
        var front = Objectives(run);
        double[] weights = [.. run.Study.GetProperty("objectives").EnumerateArray().Select(o => o.GetProperty("weight").GetDouble())];
        double[] best = [.. weights.Select((_, o) => front.Min(row => row[o]))];
        double[] worst = [.. weights.Select((_, o) => front.Max(row => row[o]))];
        var distances = front.Select(row => Math.Sqrt(weights.Select((weight, o) =>
            Math.Pow(weight / weights.Sum() * (row[o] - best[o]) / (worst[o] - best[o]), 2)).Sum())).ToList();
        var column = run.Column("distance_to_ideal");
        for (var i = 0; i < front.Count; i++)
            Check.Close(distances[i], run.Front[i][column], absolute: 1e-12, because: Rounding);
        Assert.Equal(distances.Order().Index().Select(pair => Math.Round(pair.Item, 10)), distances.Select(d => Math.Round(d, 10)));
    }

    // A bar on two supports s apart: with F/2 + M/s along the lines on the right, F/2 - M/s on the left and the same pull across both, the
    // squares of the two loads differ by 2 F M/s.
    [Theory]
    [MemberData(nameof(Studies))]
    public void The_loads_of_the_two_hang_points_differ_by_the_roll_moment_over_the_spacing(string study) =>
        ForEachPhase(study, (run, _, value) =>
        {
            var metres = run.Chosen.GetProperty("design").GetProperty("hang_point_spacing").GetProperty("unit").GetString() switch
            {
                "mm" => 0.001,
                "in" => 0.0254,
                var unit => throw new InvalidOperationException($"no shipped study has a spacing in {unit}"),
            };
            var (right, left) = (value("load_right"), value("load_left"));
            var expected = 2 * value("riser_load") * value("wing_roll_moment") / (run.Factor("hang_point_spacing") * metres);
            Check.Close(expected, right * right - left * left, relative: 1e-9, absolute: 1e-6, because: Rounding);
            Assert.Equal(right > left, value("wing_roll_moment") > 0);
        });

    // Moving the pilot by the lean puts his weight times the lean on the body; the share of it that reaches the wing takes the residual
    // away.
    [Theory]
    [MemberData(nameof(Studies))]
    public void The_pilot_s_weight_moved_by_the_lean_holds_the_residual_torque(string study) =>
        ForEachPhase(study, (run, phase, value) =>
        {
            var pilot = run.Study.GetProperty("machine").GetProperty("masses").EnumerateArray()
                .Where(item => item.GetProperty("body").GetBoolean()).Sum(item => ShippedRun.Value(item, "mass"));
            var share = phase.GetProperty("load_factor").GetDouble() * phase.GetProperty("carried").GetDouble();
            var newtons = pilot * WorkedNumbers.Gravity * share;
            Check.Close(-value("residual"), value("pendulum_share") * newtons * value("lean") / 1000, relative: 1e-9, absolute: 1e-9,
                because: Rounding);
        });

    // docs/model.md, section 5: what one sideslip cannot hold of the roll moment, the yaw moment and the weight of the wing, banked by the
    // thrust's pull to the side.
    [Theory]
    [MemberData(nameof(Studies))]
    public void The_residual_torque_is_the_sum_of_roll_part_yaw_part_and_the_weight_of_the_banked_wing(string study) =>
        ForEachPhase(study, (run, phase, value) =>
        {
            var wing = run.Study.GetProperty("wing");
            var weightOnItsArm = phase.GetProperty("load_factor").GetDouble() * ShippedRun.Value(wing, "mass") * WorkedNumbers.Gravity
                * ShippedRun.Value(wing, "lines");
            var wingWeight = weightOnItsArm * value("wing_bank") * Math.PI / 180;
            Check.Close(value("yaw_leverage") * value("wing_yaw_moment"), value("yaw_part"), relative: 1e-9, absolute: 1e-9,
                because: Rounding);
            Check.Close(wingWeight, value("wing_weight_part"), relative: 1e-9, absolute: 1e-9, because: Rounding);
            Check.Close(value("wing_roll_moment") + value("yaw_part") + wingWeight, value("residual"), relative: 1e-9, absolute: 1e-9,
                because: Rounding);
            if (!phase.GetProperty("settled").GetBoolean())
                Assert.Equal(0, value("wing_bank"));
        });

    // Rankine and Froude: no propeller gives a thrust for less than the power of an ideal disc of its diameter (docs/model-propeller.md).
    // The
    // measured blades of References/ come to 0.5 to 0.73 of it where their thrust is above a third of the static one.
    [Theory]
    [MemberData(nameof(Studies))]
    public void No_propeller_beats_the_ideal_disc_and_a_stopped_one_gives_nothing(string study) =>
        ForEachPhase(study, (run, phase, value) =>
        {
            var (thrust, speed, watts) = (value("thrust"), value("airspeed"), 2 * Math.PI * value("rpm") / 60 * value("torque"));
            if (phase.GetProperty("power").GetString() == "engine off")
            {
                Assert.Equal((0, 0), (thrust, watts));
                return;
            }

            var diameter = ShippedRun.Value(run.Study.GetProperty("machine").GetProperty("propeller"), "diameter");
            var density = WorkedFlight.DensityAt(ShippedRun.Value(phase, "altitude"));
            var ideal = thrust * (speed / 2 + Math.Sqrt(speed * speed / 4 + 2 * thrust / (Math.PI * diameter * diameter * density)));
            Assert.InRange(ideal / watts, 0.5, 0.73);
        });

    [Theory]
    [MemberData(nameof(Studies))]
    public void The_figures_of_the_mission_are_those_of_its_phases(string study)
    {
        var run = ShippedRun.Of(study);
        double[] weights = [.. run.Mission.Select(phase => phase.GetProperty("weight").GetDouble())];
        double Of(string quantity) => ShippedRun.Value(run.Chosen.GetProperty("mission"), quantity);
        double[] Each(string quantity) => [.. run.Mission.Select(phase => run.InPhase(phase, quantity))];
        var squares = Each("residual").Select((residual, p) => weights[p] * residual * residual).Sum();
        Check.Close(Math.Sqrt(squares / weights.Sum()), Of("residual_rms"), relative: 1e-12, because: Rounding);
        Check.Close(Each("body_pitch").Max() - Each("body_pitch").Min(), Of("pitch_swing"), relative: 1e-9, because: Rounding);
        Check.Close(Each("twist_margin").Min(), Of("twist_margin_worst"), relative: 1e-12, because: Rounding);
        Assert.Equal(Of("residual_rms"), run.Front[0][run.Column("residual_rms")]);
    }

    private static void ForEachPhase(string study, Action<ShippedRun, JsonElement, Func<string, double>> check)
    {
        var run = ShippedRun.Of(study);
        Assert.True(run.Mission.Count >= 3);
        foreach (var phase in run.Mission)
            check(run, phase, quantity => run.InPhase(phase, quantity));
    }

    /// <summary>What is to be made small, for each design of the front.</summary>
    private static List<double[]> Objectives(ShippedRun run)
    {
        var objectives = run.Study.GetProperty("objectives").EnumerateArray().Select(objective =>
        {
            Assert.False(objective.GetProperty("size_only").GetBoolean());
            return (
                Column: run.Column(objective.GetProperty("response").GetString()!),
                Sign: objective.GetProperty("goal").GetString() == "maximise" ? -1 : 1);
        }).ToList();
        return [.. run.Front.Select(row => objectives.Select(objective => objective.Sign * row[objective.Column]).ToArray())];
    }

    private static bool Beats(double[] a, double[] b)
    {
        var better = false;
        for (var o = 0; o < a.Length; o++)
        {
            if (a[o] > b[o])
                return false;
            better |= a[o] < b[o];
        }

        return better;
    }

    private static double? Bound(JsonElement limit, string name) =>
        limit.GetProperty(name).ValueKind == JsonValueKind.Null ? null : limit.GetProperty(name).GetDouble();
}
