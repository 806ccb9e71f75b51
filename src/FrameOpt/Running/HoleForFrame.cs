using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>Looks for the lateral offset that fits a frame whose other dimensions are fixed by what is built.</summary>
public static class HoleForFrame
{
    /// <summary>The run over the offsets of a study, everything else as hung; null when the study sweeps no offset.</summary>
    /// <param name="study">With the machine as measured.</param>
    /// <param name="hung">Every factor of the frame at its one level.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    public static StudyResult? Of(Study study, IReadOnlyList<StudyFactor> hung, int threads)
    {
        if (study.Factors.FirstOrDefault(factor => factor.IsSwept && factor.Input == GeometryInput.LateralOffset) is not { } offset)
            return null;
        var runner = new StudyRunner(
            study.ForOneFrame([offset, .. hung.Where(factor => factor.Input != GeometryInput.LateralOffset)]), threads);
        foreach (var _ in runner.Steps())
        {
        }

        return runner.Result();
    }
}
