using FrameOpt.Model;
using FrameOpt.Model.Mission;

namespace FrameOpt.Tests.Model.Mission;

public class StaticRunTests
{
    // Law: at rest the propeller takes CP(0) rho n² D⁵ / 2 pi, and the engine gives its crank torque through the drive, in proportion to
    // the density. CP(0) 0.052 and D 1.30 m, reduction 2.9, efficiency 0.96: worked-balance.yaml.
    [Fact]
    public void At_full_power_standing_still_the_propeller_takes_what_the_engine_gives()
    {
        var machine = WorkedMachine.Machine;
        var run = StaticRun.Of(machine, WorkedMachine.Phases)!;
        var n = run.PropellerRpm / 60;
        var taken = 0.052 * 1.225 * n * n * Math.Pow(1.30, 5) / (2 * Math.PI);
        var given = 2.9 * 0.96 * machine.Engine!.CrankTorque.ValueAt(2.9 * run.PropellerRpm);
        Check.Close(taken, given, relative: 1e-6, because: "the speed is found to far more digits; 1e-6 m/s is not quite rest");
        Assert.Equal(300, run.AltitudeMetres);
    }

    [Fact]
    public void Without_an_engine_nothing_is_expected() =>
        Assert.Null(StaticRun.Of(WorkedMachine.Machine with { Engine = null }, WorkedMachine.Phases));
}
