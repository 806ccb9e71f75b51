using FrameOpt.Model;
using FrameOpt.Model.Propulsion;
using FrameOpt.StudyFile.Syntax;
using static System.FormattableString;

namespace FrameOpt.StudyFile.Plausibility;

/// <summary>Compares a static bench run with momentum theory and with what the engine gives.</summary>
internal static class BenchChecks
{
    private const double SecondsPerMinute = 60;

    /// <summary>Warns of a bench run that is unlikely in itself or does not fit the engine.</summary>
    /// <param name="machine">Its propeller is known from a bench run, or nothing is checked.</param>
    /// <param name="wing">For the airspeeds.</param>
    /// <param name="mission">The phases; those at full throttle are computed with the thrust line as built.</param>
    /// <param name="benchRpm">Propeller speed of the run, or null without one.</param>
    /// <param name="placeOf">Finds a key of the file.</param>
    /// <param name="diagnostics">Takes the warnings.</param>
    public static void Check(Machine machine, Wing wing, IReadOnlyList<Phase> mission, double? benchRpm, Func<string, Node> placeOf,
        DiagnosticBag diagnostics)
    {
        if (machine.Propeller.Curve is not BenchPropeller curve || benchRpm is not { } rpm)
            return;
        UsualRanges.TipSpeed.Check(Math.PI * machine.Propeller.DiameterMetres * rpm / SecondsPerMinute, placeOf(UsualRanges.TipSpeed.Key),
            diagnostics, Invariant($" ({rpm} rpm)"));
        UsualRanges.FigureOfMerit.Check(
            ActuatorDisc.IdealPowerCoefficient(curve.StaticThrustCoefficient, 0) / curve.StaticPowerCoefficient,
            placeOf(UsualRanges.FigureOfMerit.Key), diagnostics);
        if (machine.Engine is { } engine)
            CheckEngine(machine.Propeller, engine, rpm, placeOf, diagnostics);
        foreach (var phase in mission.Where(phase => machine.Engine is not null && phase.Power is PhasePower.FullThrottle))
            CheckFlight(phase, machine, wing, rpm, placeOf, diagnostics);
    }

    private static void CheckEngine(Propeller propeller, Engine engine, double rpm, Func<string, Node> placeOf, DiagnosticBag diagnostics)
    {
        var crank = rpm * engine.Reduction;
        UsualRanges.BenchCrankSpeed.Check(crank / engine.CrankTorque.Largest, placeOf(UsualRanges.BenchCrankSpeed.Key), diagnostics,
            Invariant($" ({crank:0} rpm over {engine.CrankTorque.Largest} rpm)"));
        if (!engine.CrankTorque.Covers(crank))
            return;
        // At one speed both are proportional to the density, so that of the standard day does for both.
        var given = engine.Reduction * engine.Efficiency * engine.CrankTorque.ValueAt(crank);
        var taken = PropellerLoads.TorqueNewtonMetres(propeller.Curve.PowerCoefficient(0), Atmosphere.SeaLevelDensityKgPerM3,
            rpm / SecondsPerMinute, propeller.DiameterMetres);
        UsualRanges.EngineOverBenchTorque.Check(given / taken, placeOf(UsualRanges.EngineOverBenchTorque.Key), diagnostics,
            Invariant($" ({given:0.0} N·m over {taken:0.0} N·m)"));
    }

    private static void CheckFlight(Phase phase, Machine machine, Wing wing, double rpm, Func<string, Node> placeOf,
        DiagnosticBag diagnostics)
    {
        var conditions = PhaseConditions.Of(phase, machine, wing);
        if (conditions.Failure != FailureKind.None)
            return;
        var powertrain = new Powertrain(machine.Propeller, machine.Engine, conditions.AirspeedMetresPerSecond, conditions.Density);
        var point = powertrain.FullThrottle();
        if (point.Failure == FailureKind.None)
            UsualRanges.FlightOverBenchSpeed.Check(point.Rpm / rpm, placeOf($"mission.{phase.Name}.power"), diagnostics,
                Invariant($" in {phase.Name} ({point.Rpm:0} rpm over {rpm:0} rpm)"));
    }
}
