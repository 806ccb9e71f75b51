using FrameOpt.Model;
using FrameOpt.Model.Mission;

namespace FrameOpt.Studies.Noise;

/// <summary>A machine, a wing and a mission as they may really be, and how far any frame is built off its drawing.</summary>
/// <param name="Machine">Propeller, drag.</param>
/// <param name="Masses">Of the machine, in place of its own.</param>
/// <param name="Wing">Leverage, coupling, polar.</param>
/// <param name="Mission">In the study's order.</param>
/// <param name="BuiltOff">How far each dimension is off, m or rad.</param>
public readonly record struct NoiseCase(
    Machine Machine, MassItem[] Masses, Wing Wing, IReadOnlyList<Phase> Mission, FrameGeometry BuiltOff)
{
    /// <summary>Nothing is off.</summary>
    public static NoiseCase Of(MissionModel model) => Of(model.Machine, model.Wing, model.Phases);

    /// <summary>Nothing is off.</summary>
    public static NoiseCase Of(Machine machine, Wing wing, IReadOnlyList<Phase> mission) =>
        new(machine, [.. machine.Masses], wing, mission, default);

    /// <summary>A model with the machine, wing and mission of this case in place of its own.</summary>
    public MissionModel In(MissionModel model) => new(Machine.With(Masses), Wing, Mission, model.References);

    /// <summary>With one more dimension built off, m or rad.</summary>
    public NoiseCase Built(GeometryInput input, double deviation) =>
        this with { BuiltOff = BuiltOff.With(input, BuiltOff[input] + deviation) };

    /// <summary>With some of the masses changed.</summary>
    public NoiseCase With(Func<MassItem, bool> which, Func<MassItem, MassItem> change) =>
        this with { Masses = Array.ConvertAll(Masses, item => which(item) ? change(item) : item) };

    /// <summary>With another propeller curve: thrust and torque times these factors.</summary>
    public NoiseCase Propeller(double thrust, double torque) => this with
    {
        Machine = Machine with { Propeller = Machine.Propeller with { Curve = Machine.Propeller.Curve.Scaled(thrust, torque) } },
    };
}
