using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Running;
using FrameOpt.Studies;

namespace FrameOpt.Web.State;

/// <summary>What the pilot gets from one design in every phase, at once: the study's own model, under three leverages of the wing, with
/// the machine tried a little heavier or lighter.</summary>
public sealed class Preview
{
    private readonly MissionModel given;
    private readonly MissionModel low;
    private readonly MissionModel high;
    private BalancedBands? bands;

    /// <summary>Makes the models ready.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="trial">What is tried.</param>
    public Preview(Study study, Trial trial)
    {
        Study = study with { Machine = trial.Of(study.Machine) };
        given = StudyProblem.Model(Study);
        low = given.With(WingCase.LowLeverage.Of(Study.Wing));
        high = given.With(WingCase.HighLeverage.Of(Study.Wing));
    }

    /// <summary>The study with the machine as tried.</summary>
    public Study Study { get; }

    /// <summary>The design as the study's wing takes it.</summary>
    public DesignEvaluation Given(FrameGeometry design) => given.Evaluate(design);

    /// <summary>Residual torque of a phase at low and at high yaw leverage, N·m; null where the design cannot fly there.</summary>
    public (double? Low, double? High)[] Leverages(FrameGeometry design)
    {
        var (less, more) = (low.Evaluate(design), high.Evaluate(design));
        double? Of(DesignEvaluation one, int phase) => one.Failure is null ? one.Phases[phase][PhaseQuantity.Residual] : null;
        return [.. Study.Mission.Select((_, p) => (Of(less, p), Of(more, p)))];
    }

    /// <summary>The residual torque over propeller speed, at the airspeed of the phase that the study's balanced band is about.</summary>
    public IReadOnlyList<ResidualPoint> OverRpm(FrameGeometry design) =>
        (bands ??= new BalancedBands(given, Study.Band.PhaseIndex)).Curve(design);
}
