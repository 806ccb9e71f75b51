using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;
using FrameOpt.Tests.Reports;

namespace FrameOpt.Tests.Model.Mission;

/// <summary>What weight shift can do, and which phases it is asked of.</summary>
public class LeanTests
{
    // By hand, engine off and no drag: of each N·m on the body c/(c + h) reaches the wing. With c 50 mm it is 0.2 at h 200 mm: 0.2083 at
    // 190 mm, 0.1923 at 210 mm. Below 0.2 a lean is no cure (section 6 of docs/model.md).
    [Fact]
    public void Lean_and_effort_have_no_bound_below_a_pendulum_share_of_a_fifth_and_one_at_a_fifth_and_above()
    {
        PhaseResult Hung(double height) => new HandMachine
        {
            Power = new PhasePower.EngineOff(),
            Coupling = RiserCoupling.Soft,
            Height = height,
            Offset = 0.01,
        }.Phase;
        var (low, high) = (Hung(0.19), Hung(0.21));
        Check.Close(0.05 / 0.24, low[PhaseQuantity.PendulumShare], relative: 1e-12, because: "arithmetic only");
        Check.Close(0.05 / 0.26, high[PhaseQuantity.PendulumShare], relative: 1e-12, because: "arithmetic only");

        // The weight of the body hangs 10 mm to the left: moving it 10 mm to the right puts it back in the middle.
        Check.Close(10, low[PhaseQuantity.Lean], relative: 1e-12, because: "arithmetic only");
        Check.Close(10.0 / 80, low[PhaseQuantity.Effort], relative: 1e-12, because: "arithmetic only");
        Assert.False(low.IsBeyondLean || low.CannotBeHeld);
        Assert.Equal((double.PositiveInfinity, double.PositiveInfinity), (high[PhaseQuantity.Lean], high[PhaseQuantity.Effort]));
        Assert.True(high.IsBeyondLean && high.CannotBeHeld);
        Assert.True(double.IsFinite(high[PhaseQuantity.WeightShiftAuthority]));
    }

    // The same boundary in a whole row of offsets: no residual, however small, is cured by a lean that does nothing.
    [Fact]
    public void Row_of_offsets_has_no_bound_where_a_lean_cures_nothing()
    {
        var hand = new HandMachine { Power = new PhasePower.EngineOff(), Coupling = RiserCoupling.Soft, Height = 0.3 };
        var row = new MissionRow(hand.Mission);
        row.Prepare(hand.Geometry);
        var values = new double[17];
        PhaseQuantity.Effort.Fill(row, 0, [.. Enumerable.Range(-8, 17).Select(i => i / 1000.0)], values);
        Assert.All(values, effort => Assert.Equal(double.PositiveInfinity, effort));
    }

    [Fact]
    public void Effort_without_bound_breaks_a_limit_on_effort_by_more_than_any_number_does()
    {
        var hand = new HandMachine { Power = new PhasePower.EngineOff(), Coupling = RiserCoupling.Soft };
        var limit = new StudyLimit(new Response.OfMission(MissionQuantity.EffortWorst), false, null, 0.6);
        var (held, unheld) = (hand with { Height = 0.19 }, hand with { Height = 0.21 });
        Assert.True(limit.AsConstraint.IsSatisfiedBy(limit.ValueOf(held.Design)));
        Assert.False(limit.AsConstraint.IsSatisfiedBy(limit.ValueOf(unheld.Design)));
        Assert.True(limit.AsConstraint.Violation(limit.ValueOf(unheld.Design)) > limit.AsConstraint.Violation(1e6));
    }

    // Section 6 of docs/model.md: a launch is judged by twist and load difference; its residual is weighted, its lean is what it would
    // take if it lasted.
    [Fact]
    public void Worst_effort_leaves_out_a_phase_that_has_not_settled_and_takes_the_engine_off_in()
    {
        var geometry = WorkedMachine.Geometry(440, 25, 150, 0);
        var design = WorkedMachine.Mission.Evaluate(geometry);
        PhaseResult launch = design.Phases[0], glide = design.Phases[4];
        Assert.False(launch.Phase.IsSettled);
        Assert.Equal(design.Phases.Max(phase => phase[PhaseQuantity.Effort]), launch[PhaseQuantity.Effort]);
        Assert.Equal(0, glide.Phase.Weight);
        Assert.Equal(glide[PhaseQuantity.Effort], design[MissionQuantity.EffortWorst]);
        Assert.Equal(launch[PhaseQuantity.Residual], design[MissionQuantity.ResidualWorst]);
        Assert.False(design.With(0, PhaseQuantity.Effort, 1.5).Phases[0].CannotBeHeld);
        Assert.True(design.With(4, PhaseQuantity.Effort, 1.5).Phases[4].CannotBeHeld);

        var withoutLaunch = new MissionModel(
            WorkedMachine.Machine, WorkedMachine.Wing, [.. WorkedMachine.Phases.Skip(1)], ResponseReferences.None).Evaluate(geometry);
        Assert.Equal(withoutLaunch[MissionQuantity.EffortWorst], design[MissionQuantity.EffortWorst]);
        Assert.True(withoutLaunch[MissionQuantity.ResidualRms] < design[MissionQuantity.ResidualRms]);
    }

    [Fact]
    public void Launch_that_the_study_calls_settled_counts_in_the_worst_effort()
    {
        var lasting = new MissionModel(
            WorkedMachine.Machine,
            WorkedMachine.Wing,
            [WorkedMachine.Phases[0] with { Settled = true }, .. WorkedMachine.Phases.Skip(1)],
            ResponseReferences.None).Evaluate(WorkedMachine.Geometry(420, 22, 230, 1.5));
        Assert.Equal(lasting.Phases.Max(phase => phase[PhaseQuantity.Effort]), lasting[MissionQuantity.EffortWorst]);
        Assert.NotEqual(0, lasting.Phases[0][PhaseQuantity.WingBank]);
    }
}
