using MathNet.Numerics.Interpolation;
using MathNet.Numerics.OdeSolvers;

namespace FrameOpt.Tests.Model.Derivation;

/// <summary>Sections 1 and 2 of docs/model.md: air, airspeed, thrust, and the propeller speed and torque that go with it.</summary>
public sealed record WorkedFlight(WorkedPhase Phase, double Density, double Airspeed, double Thrust, double Rpm, double Torque)
{
    public static WorkedFlight Of(WorkedPhase phase, WorkedDesign design)
    {
        var density = DensityAt(WorkedNumbers.Altitude);
        var airspeed = phase.GivenAirspeed ?? AirspeedAtTheLiftOf(phase.ReferenceAirspeed, density);
        if (phase.Throttle == Throttle.Off)
            return new WorkedFlight(phase, density, airspeed, 0, 0, 0);

        double Thrust(double rpm) => Coefficient(WorkedNumbers.ThrustCoefficient, airspeed, rpm)
            * density * Math.Pow(rpm / 60, 2) * Math.Pow(WorkedNumbers.Diameter, 4);

        // The shaft's power divided by its angular speed.
        double Torque(double rpm) => Coefficient(WorkedNumbers.PowerCoefficient, airspeed, rpm)
            * density * Math.Pow(rpm / 60, 3) * Math.Pow(WorkedNumbers.Diameter, 5) / (2 * Math.PI * rpm / 60);

        var rpm = phase.Throttle == Throttle.Full
            ? Root.Between(1500, 2900, rpm => EngineTorqueAtThePropeller(rpm, density) - Torque(rpm))
            : Root.Between(1000, 2900, rpm => Thrust(rpm) - ThrustNeeded(phase, design, airspeed));
        return new WorkedFlight(phase, density, airspeed, Thrust(rpm), rpm, Torque(rpm));
    }

    /// <summary>With the wing at trim, whatever the airspeed of the phase.</summary>
    public double TrimAirspeed => AirspeedAtTheLiftOf(WorkedNumbers.TrimAirspeed, Density);

    /// <summary>Density of the standard atmosphere: the weight of the air above, added up from sea level (dp/dh = -g rho).</summary>
    public static double DensityAt(double altitude)
    {
        const double gasConstant = 287.05287;
        double Temperature(double height) => 288.15 - 0.0065 * height;
        var pressures = RungeKutta.FourthOrder(
            101_325, 0, altitude, 301, (height, pressure) => -WorkedNumbers.Gravity * pressure / (gasConstant * Temperature(height)));
        return pressures[^1] / (gasConstant * Temperature(altitude));
    }

    /// <summary>The airspeed at which all that flies needs the same lift coefficient as the polar's mass at its own airspeed and
    /// density.</summary>
    private static double AirspeedAtTheLiftOf(double referenceAirspeed, double density)
    {
        double LiftCoefficient(double mass, double rho, double speed) =>
            mass * WorkedNumbers.Gravity / (rho * speed * speed / 2 * WorkedNumbers.WingArea);
        var wanted = LiftCoefficient(WorkedNumbers.PolarMass, WorkedNumbers.SeaLevelDensity, referenceAirspeed);
        return Root.Between(5, 25, speed => LiftCoefficient(WorkedNumbers.AllUpMass, density, speed) - wanted);
    }

    /// <summary>The power along the path replaces what the glide loses and lifts the weight at the climb rate. Only the forward part of the
    /// thrust gives power.</summary>
    private static double ThrustNeeded(WorkedPhase phase, WorkedDesign design, double airspeed)
    {
        var weight = WorkedNumbers.AllUpMass * WorkedNumbers.Gravity;
        var powerNeeded = weight * airspeed / phase.GlideRatio + weight * phase.ClimbRate;
        return powerNeeded / (airspeed * design.ThrustLine.X);
    }

    private static double Coefficient(double[] column, double airspeed, double rpm) =>
        LinearSpline.InterpolateSorted(WorkedNumbers.AdvanceRatio, column).Interpolate(airspeed / (rpm / 60 * WorkedNumbers.Diameter));

    /// <summary>The crank's torque through the drive, in proportion to the density.</summary>
    private static double EngineTorqueAtThePropeller(double rpm, double density) =>
        LinearSpline.InterpolateSorted(WorkedNumbers.CrankRpm, WorkedNumbers.CrankTorque).Interpolate(rpm * WorkedNumbers.Reduction)
        * WorkedNumbers.Reduction * WorkedNumbers.DriveEfficiency * density / WorkedNumbers.SeaLevelDensity;
}
