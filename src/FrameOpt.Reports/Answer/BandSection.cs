using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Model.Propulsion;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>Where on the throttle the design is balanced.</summary>
internal static class BandSection
{
    /// <summary>The balanced bands of the propeller's speed.</summary>
    public static AnswerSection Of(StudyResult result, DesignEvaluation chosen)
    {
        var phase = chosen.Phases[result.Study.Band.PhaseIndex];
        var where = $"At the airspeed of {phase.Phase.Name} ({NumberFormat.Text(phase[PhaseQuantity.Airspeed], "m/s")})";
        var within = $"within {NumberFormat.Text(result.Study.Band.WithinNewtonMetres, "N·m")}";
        var ranges = string.Join(" and ", result.Bands.Select(band =>
            $"from {RpmText.Range(result.Study.Machine, band.FromRpm, band.ToRpm)}"));
        return new AnswerSection("Balanced band",
        [
            result.Bands.Count == 0
                ? $"{where}, no propeller speed gives a residual torque {within}."
                : $"{where}, the residual torque stays {within} at propeller speeds {ranges}.",
            .. BeyondEngine(result),
        ]);
    }

    /// <summary>A band is a property of the geometry; what of it the engine cannot reach is said.</summary>
    private static IEnumerable<string> BeyondEngine(StudyResult result)
    {
        var (machine, at) = (result.Study.Machine, result.Mission.Conditions[result.Study.Band.PhaseIndex]);
        if (machine.Engine is not { } engine)
            yield break;
        var full = new Powertrain(machine.Propeller, engine, at.AirspeedMetresPerSecond, at.Density).FullThrottle();
        if (full.Failure == FailureKind.None && result.Bands.Any(band => band.ToRpm > full.Rpm))
            yield return $"Full throttle at that airspeed is {RpmText.Of(machine, full.Rpm)}: the engine cannot turn the propeller faster, "
                + "so what lies above is out of reach.";
    }

    /// <summary>What the picture of torque against propeller speed shows, and the phases it marks.</summary>
    public static IEnumerable<string> PictureNotes(Machine machine, DesignEvaluation design)
    {
        yield return "Curves are for the airspeed above; each phase is marked at its own airspeed and weight, so its mark need not lie "
            + "on the curve.";
        foreach (var (phase, number) in RpmPlot.Marked(design).Select((phase, p) => (phase, p + 1)))
            yield return $"{number} {phase.Phase.Name}: {RpmText.Of(machine, phase[PhaseQuantity.Rpm])}, {SideText.Residual(phase)}";
    }
}
