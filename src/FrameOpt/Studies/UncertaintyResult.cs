using FrameOpt.Model.Mission;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Studies;

/// <summary>How sure the answer is: the chosen design over a sample of what may really be, and what moves it most.</summary>
/// <param name="Setting">What is uncertain.</param>
/// <param name="Sample">The design over a common sample.</param>
/// <param name="Bars">For each source, the one that moves the residual most first.</param>
public sealed record UncertaintyResult(NoiseSetting Setting, SampleSummary Sample, IReadOnlyList<NoiseBar> Bars)
{
    /// <summary>Whether the chosen design is the best; null when there is nothing to compare.</summary>
    public ChoiceResult? Choice { get; init; }

    /// <summary>What the spread of each settled phase's residual comes from; empty with correlated sources, for which the shares are not
    /// defined this way.</summary>
    public IReadOnlyList<SpreadShares> Shares { get; init; } = [];
}

/// <summary>One design over a sample of cases.</summary>
/// <param name="Cases">How many.</param>
/// <param name="LimitsMet">Share of the cases in which every limit is met.</param>
/// <param name="EachLimit">The same for each limit, in the study's order.</param>
/// <param name="Held">Share of the cases in which the pilot can hold every settled phase.</param>
/// <param name="Phases">In mission order.</param>
public sealed record SampleSummary(
    int Cases, Estimate LimitsMet, IReadOnlyList<Estimate> EachLimit, Estimate Held, IReadOnlyList<PhaseSpread> Phases);

/// <summary>A share estimated from several independent samples.</summary>
/// <param name="Value">Their mean.</param>
/// <param name="StandardError">Of that mean, from how they differ; 0 where all are alike.</param>
public readonly record struct Estimate(double Value, double StandardError);

/// <summary>What a phase leaves to the pilot over the sample; cases that cannot fly are left out.</summary>
/// <param name="Residual">N·m, to the right +.</param>
/// <param name="Effort">Without unit; infinite where no lean cures the turn.</param>
public sealed record PhaseSpread(Percentiles Residual, Percentiles Effort);

/// <summary>Values that a tenth, half and nine tenths of all cases do not exceed; NaN when no case flies.</summary>
/// <param name="Tenth">10 %.</param>
/// <param name="Median">50 %.</param>
/// <param name="NineTenths">90 %.</param>
public readonly record struct Percentiles(double Tenth, double Median, double NineTenths);

/// <summary>What one uncertain number does alone.</summary>
/// <param name="Source">Which.</param>
/// <param name="LowDeviation">Its deviation at the 10 % point.</param>
/// <param name="HighDeviation">Its deviation at the 90 % point.</param>
/// <param name="Low">The design there.</param>
/// <param name="High">The design there.</param>
/// <param name="LowBest">The best design of the front there; null when it is the chosen one, or none meets the limits.</param>
/// <param name="HighBest">The same at the other end.</param>
public sealed record NoiseBar(
    NoiseSource Source, double LowDeviation, double HighDeviation, DesignEvaluation Low, DesignEvaluation High,
    FrontDesign? LowBest, FrontDesign? HighBest)
{
    /// <summary>How far it moves the residual of a phase, N·m; infinite when the design does not fly at one end.</summary>
    public double Moves(int phase) => Low.Failure is not null || High.Failure is not null ? double.PositiveInfinity
        : Math.Abs(High.Phases[phase][PhaseQuantity.Residual] - Low.Phases[phase][PhaseQuantity.Residual]);
}

/// <summary>How much of the spread of one number over the cases comes from each source.</summary>
/// <param name="Phase">Whose residual torque it is, by its place in the mission.</param>
/// <param name="StandardDeviation">Of that residual over the cases, N·m.</param>
/// <param name="Shares">One a source, the largest first.</param>
public sealed record SpreadShares(int Phase, double StandardDeviation, IReadOnlyList<SourceShare> Shares);

/// <summary>What a source has in the spread of a number.</summary>
/// <param name="Source">Which.</param>
/// <param name="Total">Share of the variance that remains when every other source is known (total Sobol index).</param>
/// <param name="Shapley">Its part when all of the variance is divided among the sources; all of them add up to 1.</param>
public sealed record SourceShare(NoiseSource Source, double Total, double Shapley);
