using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Search;
using FrameOpt.Studies;
using FrameOpt.Tests.Model;

namespace FrameOpt.Tests.Running;

/// <summary>Studies of the worked machine over a grid of millimetres and degrees.</summary>
public static class WorkedStudy
{
    private static readonly DisplayUnit millimetre = new("mm", 0.001);
    private static readonly DisplayUnit degree = new("deg", Math.PI / 180);

    /// <summary>Objectives residual_rms, weight_shift_authority[cruise], pitch_swing; no limits unless given.</summary>
    public static Study Over(
        double[] spacings, double[] offsets, double[] heights, double[] angles, IReadOnlyList<StudyObjective>? objectives = null,
            params StudyLimit[] limits)
    {
        objectives ??=
        [
            Minimise(MissionQuantity.ResidualRms),
            new(new Response.OfPhase(PhaseQuantity.WeightShiftAuthority, 2, "cruise"), Maximise: true, Magnitude: false, 0),
            Minimise(MissionQuantity.PitchSwing),
        ];
        return new Study(
            "Worked machine",
            "",
            WorkedMachine.Machine,
            WorkedMachine.Wing,
            WorkedMachine.Phases,
            [
                Factor(GeometryInput.HangPointSpacing, spacings, millimetre),
                Factor(GeometryInput.LateralOffset, offsets, millimetre),
                Factor(GeometryInput.SuspensionHeight, heights, millimetre),
                Factor(GeometryInput.ThrustLineAngle, angles, degree),
            ],
            objectives,
            limits,
            new RankingSetting(RankingMethod.DistanceToIdeal, [.. objectives.Select(_ => 1.0)]),
            null,
            null,
            new BandSetting(2, 5),
            [],
            [],
            new string('0', 64));
    }

    /// <summary>The grid of the benchmarks: 21 x 61 x 41 x 21 = 1,102,941 designs.</summary>
    public static Study Million(IReadOnlyList<StudyObjective>? objectives = null, params StudyLimit[] limits) =>
        Over(Steps(380, 5, 21), Steps(0, 1, 61), Steps(100, 7.5, 41), Steps(-5, 0.5, 21), objectives, limits);

    public static StudyObjective Minimise(MissionQuantity quantity) => new(new Response.OfMission(quantity), false, false, 0);

    public static double[] Steps(double from, double step, int count) => [.. Enumerable.Range(0, count).Select(i => from + i * step)];

    private static StudyFactor Factor(GeometryInput input, double[] levels, DisplayUnit unit) =>
        new(input, [.. levels.Select(unit.ToSi)], unit);
}
