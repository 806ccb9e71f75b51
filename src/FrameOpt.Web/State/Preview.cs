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

/// <summary>What is tried on the machine beside the study: nothing of it is written.</summary>
/// <param name="SeatRight">The pilot sits further to the right, m.</param>
/// <param name="SeatForward">The pilot sits further forward, m.</param>
/// <param name="Pilot">The pilot is heavier, kg.</param>
/// <param name="Fuel">Share of the study's fuel, 0 to 1.</param>
public sealed record Trial(double SeatRight, double SeatForward, double Pilot, double Fuel)
{
    /// <summary>Nothing is tried.</summary>
    public static Trial None { get; } = new(0, 0, 0, 1);

    /// <summary>The machine as tried.</summary>
    public Machine Of(Machine machine)
    {
        if (this == None)
            return machine;
        var body = machine.Masses.First(item => item.IsBody);
        MassItem Seated(MassItem item) => item with
        {
            At = item.At with
            {
                RightMetres = item.At.RightMetres + SeatRight,
                ForwardMetres = item.At.ForwardMetres + SeatForward,
            },
        };
        return machine.With([.. machine.Masses.Select(item =>
            item == body ? Seated(item) with { MassKilograms = Math.Max(1, item.MassKilograms + Pilot) }
            : item.IsBody ? Seated(item)
            : item.IsFuel ? item with { MassKilograms = Math.Max(0.01, item.MassKilograms * Fuel) } : item)]);
    }
}
