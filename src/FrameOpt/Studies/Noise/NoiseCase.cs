using FrameOpt.Model;

namespace FrameOpt.Studies.Noise;

/// <summary>A machine, a wing and a mission as they may really be, and how far any frame is built off its drawing.</summary>
/// <param name="Machine">Masses, propeller, drag.</param>
/// <param name="Wing">Leverage, coupling, polar.</param>
/// <param name="Mission">In the study's order.</param>
/// <param name="BuiltOff">How far each dimension is off, m or rad.</param>
public sealed record NoiseCase(Machine Machine, Wing Wing, IReadOnlyList<Phase> Mission, FrameGeometry BuiltOff)
{
    /// <summary>With one more dimension built off, m or rad.</summary>
    public NoiseCase Built(GeometryInput input, double deviation) =>
        this with { BuiltOff = BuiltOff.With(input, BuiltOff[input] + deviation) };

    /// <summary>With some of the masses changed.</summary>
    public NoiseCase Masses(Func<MassItem, bool> which, Func<MassItem, MassItem> change) =>
        this with { Machine = Machine.With([.. Machine.Masses.Select(item => which(item) ? change(item) : item)]) };

    /// <summary>With another propeller curve: thrust and torque times these factors.</summary>
    public NoiseCase Propeller(double thrust, double torque) => this with
    {
        Machine = Machine with { Propeller = Machine.Propeller with { Curve = Machine.Propeller.Curve.Scaled(thrust, torque) } },
    };
}
