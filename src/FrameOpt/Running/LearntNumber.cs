using FrameOpt.Fit;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Running;

/// <summary>A number of a study that measurements corrected.</summary>
/// <param name="Source">Which.</param>
/// <param name="Before">What was believed of its deviation.</param>
/// <param name="After">What is believed now.</param>
public sealed record LearntNumber(NoiseSource Source, Belief Before, Belief After)
{
    /// <summary>A number that keeps so much of its spread and moved by less than <see cref="LeastMove"/> was not learnt.</summary>
    private const double LeastLearnt = 0.98;
    private const double LeastMove = 0.1;

    /// <summary>What a hang check taught of the study.</summary>
    public static IReadOnlyList<LearntNumber> Of(HangCheckFit fit) =>
    [
        .. fit.Causes.Where(cause => cause.Source is { IsOfFrame: false })
            .Select(cause => new LearntNumber(cause.Source!, cause.Before, cause.After)),
    ];

    /// <summary>What a form taught of the study.</summary>
    public static IReadOnlyList<LearntNumber> Of(MeasuredFit fit) =>
    [
        .. fit.Numbers.Index().Where(number => number.Item.IsOfStudy).Select(number => new LearntNumber(number.Item.Source!,
            new Belief(number.Item.Before.Start, number.Item.Before.StandardDeviation), fit.Least.Unknowns[number.Index]))
            .Where(number => number.IsLearnt),
    ];

    /// <summary>How the numbers that a form taught go together now.</summary>
    public static IReadOnlyList<RankCorrelation> Correlations(MeasuredFit fit)
    {
        var indices = fit.Numbers.Index().Where(number => number.Item.IsOfStudy).Select(number => number.Index).ToList();
        return NoiseBeliefs.Ranks([.. indices.Select(i => fit.Numbers[i].Source!)],
            (i, j) => fit.Least.Correlation(indices[i], indices[j]));
    }

    private bool IsLearnt => After.StandardDeviation < LeastLearnt * Before.StandardDeviation
        || Math.Abs(After.Value - Before.Value) > LeastMove * Before.StandardDeviation;
}
