using FrameOpt.Model;

namespace FrameOpt.Studies.Noise;

/// <summary>A machine, a wing, a mission and a frame as they may really be.</summary>
/// <param name="Machine">Masses, propeller, drag.</param>
/// <param name="Wing">Leverage, coupling, polar.</param>
/// <param name="Mission">In the study's order.</param>
/// <param name="Geometry">The design as built.</param>
public sealed record NoiseCase(Machine Machine, Wing Wing, IReadOnlyList<Phase> Mission, FrameGeometry Geometry)
{
    /// <summary>A design exactly as the study says.</summary>
    public static NoiseCase AsStudied(Study study, FrameGeometry design) => new(study.Machine, study.Wing, study.Mission, design);

    /// <summary>With one dimension built off by a deviation, m or rad.</summary>
    public NoiseCase Built(GeometryInput input, double deviation) =>
        this with { Geometry = Geometry.With(input, Geometry[input] + deviation) };

    /// <summary>With some of the masses changed.</summary>
    public NoiseCase Masses(Func<MassItem, bool> which, Func<MassItem, MassItem> change) =>
        this with { Machine = Machine.With([.. Machine.Masses.Select(item => which(item) ? change(item) : item)]) };

    /// <summary>With another propeller curve: thrust and torque times these factors.</summary>
    public NoiseCase Propeller(double thrust, double torque) => this with
    {
        Machine = Machine with { Propeller = Machine.Propeller with { Curve = Machine.Propeller.Curve.Scaled(thrust, torque) } },
    };
}
