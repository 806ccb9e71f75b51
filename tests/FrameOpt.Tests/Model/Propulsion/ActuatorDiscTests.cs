using FrameOpt.Model;
using FrameOpt.Model.Propulsion;

namespace FrameOpt.Tests.Model.Propulsion;

public class ActuatorDiscTests
{
    public static TheoryData<PublishedPropeller> Published => PublishedPropeller.All;

    // Rows with a braking propeller are outside the bound.
    [Theory]
    [MemberData(nameof(Published))]
    public void Every_measured_propeller_needs_more_than_the_ideal_power(PublishedPropeller propeller)
    {
        foreach (var row in propeller.Rows.Where(row => row.ThrustCoefficient >= 0))
            Assert.True(row.PowerCoefficient >= ActuatorDisc.IdealPowerCoefficient(row.ThrustCoefficient, row.AdvanceRatio),
                row.ToString());
        Assert.True(ActuatorDisc.SmallestPowerOverIdeal(propeller.Rescaled) > 1);
    }

    // The table of the worked balance: a plausible 1.3 m propeller, made up for the worked numbers.
    [Fact]
    public void The_propeller_of_the_worked_balance_needs_more_than_the_ideal_power()
    {
        var table = new PropellerTable([
            new(0.0, 0.1050, 0.05200), new(0.1, 0.0959, 0.05245), new(0.2, 0.0856, 0.05140), new(0.3, 0.0741, 0.04885),
            new(0.4, 0.0614, 0.04480), new(0.5, 0.0475, 0.03925), new(0.6, 0.0324, 0.03220)]);
        Assert.True(ActuatorDisc.SmallestPowerOverIdeal(table) > 1);
    }

    // A builder's slip: thrust typed in newtons ten times too large.
    [Fact]
    public void Bench_figures_too_good_to_be_true_show_below_one()
    {
        var slip = BenchPropeller.FromStaticBench(2600, 5897, 56.42, 1.225, 1.25, zeroThrustAdvanceRatio: 0.7);
        Assert.True(ActuatorDisc.SmallestPowerOverIdeal(slip) < 1);
    }

    // Source: P² = T³/(2 rho A) worked by hand: T 589.7 N, rho 1.225 kg/m³, D 1.25 m, 2 rho A = 3.00660 kg/m, P = 8258.6 W.
    [Fact]
    public void Static_thrust_needs_the_power_of_the_actuator_disc() =>
        Check.Close(8258.6, ActuatorDisc.IdealPowerWatts(589.7, 0, 1.225, 1.25), absolute: 0.1, because: "five printed digits");

    // Law: the two forms are one bound in other units.
    [Fact]
    public void Coefficient_form_and_power_form_agree()
    {
        const double n = 40, diameter = 1.3, density = 1.2, ct = 0.08, airspeed = 13;
        var power = ActuatorDisc.IdealPowerWatts(PropellerLoads.ThrustNewtons(ct, density, n, diameter), airspeed, density, diameter);
        var coefficient = ActuatorDisc.IdealPowerCoefficient(ct, PropellerLoads.AdvanceRatio(airspeed, n, diameter));
        Check.Close(power, coefficient * density * Math.Pow(n, 3) * Math.Pow(diameter, 5), relative: 1e-12, because: "arithmetic only");
    }

    [Fact]
    public void Braking_propeller_is_outside_the_bound()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ActuatorDisc.IdealPowerWatts(-1, 10, 1.2, 1.3));
        Assert.Throws<ArgumentOutOfRangeException>(() => ActuatorDisc.IdealPowerCoefficient(-0.01, 0.5));
        Assert.Equal(double.PositiveInfinity, ActuatorDisc.SmallestPowerOverIdeal(
            new PropellerTable([new(0, -0.1, 0.05), new(1, -0.2, 0.05)])));
    }
}
