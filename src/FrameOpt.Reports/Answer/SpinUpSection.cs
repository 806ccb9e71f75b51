using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>How quickly the throttle may be opened.</summary>
internal static class SpinUpSection
{
    public const string Title = "Opening the throttle";

    /// <summary>Below 1 the risers twist: the bound where a study has none.</summary>
    private const double TwistedMargin = 1;

    /// <summary>The section; none without a phase under power.</summary>
    public static IEnumerable<AnswerSection> Of(StudyResult result, DesignEvaluation design)
    {
        if (Find(result, design) is { } spin)
            yield return new AnswerSection(Title, [Verdict(result.Study, spin),
                "This takes the propeller from standstill to its speed at an even rate, which is on the safe side for an engine that "
                    + "idles. It leaves out the engine's own inertia and the overshoot: a torque that comes on quickly twists the "
                    + "risers further than the same torque held steady, by up to twice."]);
    }

    /// <summary>The check of a design, or null without a phase under power.</summary>
    public static SpinUp? Find(StudyResult result, DesignEvaluation design) => SpinUp.PhaseOf(design) is { } phase
        ? SpinUp.Of(result.Mission, design.Geometry, phase, LeastMargin(result.Study, phase)) : null;

    /// <summary>"Open the throttle over 1.2 s or longer: faster, ..."; or that any time will do, that none will, or what is not
    /// known.</summary>
    public static string Verdict(Study study, SpinUp spin)
    {
        var (name, least) = (study.Mission[spin.PhaseIndex].Name, Margin(spin.LeastMargin));
        if (double.IsPositiveInfinity(spin.ShortestSeconds))
            return $"The steady torque of {name} alone leaves a twist margin of {Margin(spin.SteadyMargin)}, below {least}: opening the "
                + "throttle slowly does not help.";
        if (spin.ShortestSeconds > 0)
            return $"Open the throttle over {Up(spin.ShortestSeconds)} or longer: faster, the torque of spinning up the propeller takes "
                + $"the twist margin in {name} below {least}. Held steady it is {Margin(spin.SteadyMargin)}.";
        if (double.IsNaN(spin.ShortestSeconds))
            return $"How quickly the throttle may be opened in {name} before the twist margin falls below {least} cannot be told: the "
                + "study does not give the propeller's moment of inertia (`machine.propeller.polar_inertia`)"
                + (double.IsNaN(spin.EngineMargin) ? " or the engine's torque." : $", and at the most the engine gives, "
                    + $"{NumberFormat.Text(spin.EngineTorqueNewtonMetres, "N·m")} at the propeller, it is {Margin(spin.EngineMargin)}.");
        return $"However quickly the throttle is opened, the torque of spinning up the propeller keeps the twist margin in {name} at "
            + $"{least} or above: " + (spin.EngineMargin >= spin.LeastMargin
                ? $"the engine gives {NumberFormat.Text(spin.EngineTorqueNewtonMetres, "N·m")} at the propeller at most, and the "
                    + $"margin is then {Margin(spin.EngineMargin)}, {Margin(spin.SteadyMargin)} held steady."
                : $"even in a tenth of a second. Held steady it is {Margin(spin.SteadyMargin)}.");
    }

    private static double LeastMargin(Study study, int phase) => study.Limits.Where(limit => limit.Response switch
    {
        Response.OfMission mission => mission.Quantity == MissionQuantity.TwistMarginWorst,
        Response.OfPhase own => own.Quantity == PhaseQuantity.TwistMargin && own.PhaseIndex == phase,
        _ => false,
    }).Select(limit => limit.AtLeast).OfType<double>().DefaultIfEmpty(TwistedMargin).Max();

    private static string Margin(double value) => FormattableString.Invariant($"{value:0.##}");

    /// <summary>Up to the next tenth of a second: what is shown is never too short.</summary>
    private static string Up(double seconds) => FormattableString.Invariant($"{Math.Ceiling(10 * seconds) / 10:0.0} s");
}
