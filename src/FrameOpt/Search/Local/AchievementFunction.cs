using FrameOpt.Search.Evolution;

namespace FrameOpt.Search.Local;

/// <summary>Augmented achievement scalarising function: the improvement of a design over its reference design as one number, decided by the
/// objective that improved least.</summary>
/// <remarks>Source: A. P. Wierzbicki 1980, The use of reference objectives in multiobjective optimization, Lecture Notes in Economics and
/// Mathematical Systems 177:468-486 (from memory), with the given design's objectives as the reference point.</remarks>
internal sealed class AchievementFunction
{
    private const double AugmentationWeight = 1e-3;
    private readonly double[] references;
    private readonly double[] scales;

    /// <summary>Takes the first <paramref name="designs"/> members as references. Each objective is scaled by its range over the feasible
    /// designs, or by 1 where it has no range.</summary>
    public AchievementFunction(Population members, int designs)
    {
        references = members.Values[..(designs * members.Objectives)];
        scales = new double[members.Objectives];
        for (var j = 0; j < scales.Length; j++)
        {
            var (least, most) = (double.PositiveInfinity, double.NegativeInfinity);
            for (var i = 0; i < designs; i++)
            {
                if (members.Violation[i] > 0)
                    continue;
                least = Math.Min(least, members.ValuesOf(i)[j]);
                most = Math.Max(most, members.ValuesOf(i)[j]);
            }

            scales[j] = most > least && double.IsFinite(most - least) ? most - least : 1;
        }
    }

    /// <summary>True when a member is better than another as the successor of a reference: its violation is smaller, or both are feasible
    /// and it improved more.</summary>
    public bool IsBetter(Population members, int member, int other, int reference) => members.Violation[member] != members.Violation[other]
        ? members.Violation[member] < members.Violation[other]
        : members.Violation[member] == 0 && Of(members, member, reference) < Of(members, other, reference);

    /// <summary>Makes a member's objectives the reference.</summary>
    public void SetReference(Population members, int member, int reference) =>
        members.ValuesOf(member).CopyTo(references.AsSpan(reference * scales.Length));

    /// <summary>Negative when every objective improved; smaller is better.</summary>
    private double Of(Population members, int member, int reference)
    {
        var values = members.ValuesOf(member);
        var least = double.NegativeInfinity;
        var sum = 0.0;
        for (var j = 0; j < scales.Length; j++)
        {
            var change = (values[j] - references[reference * scales.Length + j]) / scales[j];
            least = Math.Max(least, change);
            sum += change;
        }

        return least + AugmentationWeight * sum;
    }
}
