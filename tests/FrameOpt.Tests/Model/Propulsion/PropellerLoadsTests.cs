using FrameOpt.Model.Propulsion;

namespace FrameOpt.Tests.Model.Propulsion;

public class PropellerLoadsTests
{
    // Source: worked by hand from the definitions: D 1.25 m, 2600 rpm, 1.225 kg/m³, CT 0.105, CP 0.0505.
    [Fact]
    public void Worked_propeller_gives_its_thrust_torque_and_power()
    {
        var torque = PropellerLoads.TorqueNewtonMetres(0.0505, 1.225, 2600.0 / 60, 1.25);
        const string digits = "half of the last printed digit";
        Check.Close(589.7, PropellerLoads.ThrustNewtons(0.105, 1.225, 2600.0 / 60, 1.25), absolute: 0.05, because: digits);
        Check.Close(56.42, torque, absolute: 0.005, because: digits);
        Check.Close(15362, PropellerLoads.PowerWatts(torque, 2600.0 / 60), absolute: 0.5, because: digits);
        Check.Close(56.42, PropellerLoads.TorqueFromPower(15362, 2600.0 / 60), absolute: 0.005, because: digits);
    }

    // Worked by hand: 13 m/s over 40 revolutions of 1.3 m a second.
    [Fact]
    public void Advance_ratio_is_the_way_per_revolution_in_diameters() =>
        Check.Close(0.25, PropellerLoads.AdvanceRatio(13, 40, 1.3), relative: 1e-15, because: "arithmetic only");
}
