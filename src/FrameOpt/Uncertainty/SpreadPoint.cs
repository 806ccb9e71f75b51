using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Uncertainty;

/// <summary>The residual torques of a design with every source off by some deviation. A model whose machine, wing and mission are the last
/// point's is not built again. For one thread at a time.</summary>
/// <param name="setting">The sources.</param>
/// <param name="mission">The model as studied.</param>
/// <param name="design">As drawn.</param>
/// <param name="phases">Those asked for.</param>
internal sealed class SpreadPoint(NoiseSetting setting, MissionModel mission, FrameGeometry design, int[] phases)
{
    private readonly double[] last = new double[setting.Sources.Count];
    private MissionRow? row;

    /// <summary>The residual of each phase, N·m; null for a design that cannot fly.</summary>
    /// <param name="off">Deviation of each source, in its unit.</param>
    public double[]? Residuals(double[] off)
    {
        var isNew = row is null;
        for (var s = 0; s < off.Length; s++)
            isNew |= off[s] != last[s] && !setting.Sources[s].Source.IsOfFrame;
        var state = NoiseCase.Of(mission);
        for (var s = 0; s < off.Length; s++)
            if (isNew || setting.Sources[s].Source.IsOfFrame)
                state = setting.Sources[s].Source.Apply(state, off[s]);
        if (isNew)
            row = new MissionRow(state.In(mission));
        off.CopyTo(last, 0);
        return row!.PrepareDesign(design + state.BuiltOff).Kind == FailureKind.None
            ? Array.ConvertAll(phases, phase => PhaseQuantity.Residual.Of(row, phase)) : null;
    }
}
