using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>Where on the throttle the design is balanced.</summary>
internal static class BandSection
{
    public static AnswerSection Of(StudyResult result, DesignEvaluation chosen)
    {
        var phase = chosen.Phases[result.Study.Band.PhaseIndex];
        var where = $"At the airspeed of {phase.Phase.Name} ({NumberFormat.Text(phase[PhaseQuantity.Airspeed], "m/s")})";
        var within = $"within {NumberFormat.Text(result.Study.Band.WithinNewtonMetres, "N·m")}";
        var ranges = string.Join(" and ", result.Bands.Select(band =>
            FormattableString.Invariant($"from {band.FromRpm:0} to {band.ToRpm:0} rpm")));
        return new AnswerSection("Balanced band",
        [
            result.Bands.Count == 0
                ? $"{where} no propeller speed leaves a residual torque {within}."
                : $"{where} the residual torque stays {within} {ranges} of the propeller.",
        ]);
    }
}
