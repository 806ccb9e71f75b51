using FrameOpt.Model;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;
using static System.FormattableString;

namespace FrameOpt.StudyFile.Sections;

/// <summary>
/// Looks at the airspeeds given to phases that need no glide ratio, which the polar does not check: a slip of the pen or of the unit shows
/// there.
/// </summary>
internal static class AirspeedWarnings
{
    /// <summary>Below this share of trim no wing is flown steadily (common practice, no source); a launch run is not far below
    /// trim.</summary>
    private const double SlowestShareOfTrim = 0.6;

    /// <summary>Warns of each airspeed above the polar's top or far below trim, both at the phase's own mass, load factor and
    /// density.</summary>
    /// <param name="study">Without mistakes.</param>
    /// <param name="phases">Those of its mission, in order; one may have been added at the end.</param>
    /// <param name="machine">For the mass.</param>
    /// <param name="wing">For the polar.</param>
    public static void Check(Section study, IReadOnlyList<Phase> phases, Machine machine, Wing wing)
    {
        foreach (var (entry, phase) in study.Entries("mission").Zip(phases))
        {
            if (phase is not
                {
                    Speed: FlightSpeed.AtAirspeed { MetresPerSecond: var given },
                    Power: PhasePower.FullThrottle or PhasePower.AtRpm or PhasePower.EngineOff
                })
                continue;
            var at = ((Node.Map)entry.Value).Entries.First(key => key.Key.Text == "airspeed").Value;
            var top = SpeedAt(wing.Polar.AirspeedAtFraction.Largest);
            var trim = SpeedAt(wing.Polar.AirspeedAtFraction.Smallest);
            if (given > top)
                study.DiagnosticBag.AddWarning(
                    at, Invariant($"the airspeed of {phase.Name}, {given:0.0} m/s, lies above the wing's top speed there, {top:0.0} m/s."));
            else if (given < SlowestShareOfTrim * trim)
                study.DiagnosticBag.AddWarning(
                    at, Invariant(
                        $"the airspeed of {phase.Name}, {given:0.0} m/s, lies below {SlowestShareOfTrim} of the wing's trim speed there, {trim:0.0} m/s."));

            double SpeedAt(double fraction) =>
                PhaseConditions.Of(phase with { Speed = new FlightSpeed.AtFraction(fraction) }, machine, wing).AirspeedMetresPerSecond;
        }
    }
}
