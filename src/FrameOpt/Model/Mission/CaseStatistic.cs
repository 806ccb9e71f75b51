using static System.FormattableString;

namespace FrameOpt.Model.Mission;

/// <summary>One number for the values of a response over cases.</summary>
public abstract record CaseStatistic
{
    private CaseStatistic()
    {
    }

    /// <summary>As a study file writes it: "percentile 90 of effort_worst".</summary>
    /// <param name="response">Name of the response.</param>
    public abstract string Of(string response);

    /// <summary>Its value.</summary>
    /// <param name="values">One a case, NaN for a case that does not fly; left in another order.</param>
    /// <param name="isHigherBetter">True when more of the response is better: decides which end is the worst.</param>
    /// <returns>Infinite where a case that does not fly decides it; NaN where none flies.</returns>
    public abstract double Of(Span<double> values, bool isHigherBetter);

    /// <summary>Cases that do not fly as the worst of all, then in ascending order.</summary>
    private static void Sort(Span<double> values, bool isHigherBetter)
    {
        foreach (ref var value in values)
            value = double.IsNaN(value) ? isHigherBetter ? double.NegativeInfinity : double.PositiveInfinity : value;
        values.Sort();
    }

    /// <summary>Mean and sum of squared differences from it, over the cases that fly.</summary>
    /// <remarks>Source: B. P. Welford, Note on a method for calculating corrected sums of squares and products, Technometrics 4 (1962)
    /// 419-420. The mean of equal values is that value to the last bit.</remarks>
    private static (double Mean, double Squares, int Count) Moments(ReadOnlySpan<double> values)
    {
        double mean = 0, squares = 0;
        var count = 0;
        foreach (var value in values)
        {
            if (double.IsNaN(value))
                continue;
            var difference = value - mean;
            mean += difference / ++count;
            squares += difference * (value - mean);
        }

        return count == 0 ? (double.NaN, double.NaN, 0) : (mean, squares, count);
    }

    /// <summary>Mean of the cases that fly.</summary>
    public sealed record Mean : CaseStatistic
    {
        /// <inheritdoc/>
        public override string Of(string response) => $"mean of {response}";

        /// <inheritdoc/>
        public override double Of(Span<double> values, bool isHigherBetter) => Moments(values).Mean;
    }

    /// <summary>Standard deviation of the cases that fly.</summary>
    public sealed record StandardDeviation : CaseStatistic
    {
        /// <inheritdoc/>
        public override string Of(string response) => $"standard deviation of {response}";

        /// <inheritdoc/>
        public override double Of(Span<double> values, bool isHigherBetter)
        {
            var (_, squares, count) = Moments(values);
            return count == 1 ? 0 : Math.Sqrt(squares / (count - 1));
        }
    }

    /// <summary>The value that a share of all cases does not exceed.</summary>
    /// <param name="Percent">Above 0 and below 100.</param>
    /// <remarks>Source: the inverse of the empirical distribution, R. J. Hyndman and Y. Fan, Sample quantiles in statistical packages,
    /// American Statistician 50 (1996) 361-365, definition 1.</remarks>
    public sealed record Percentile(double Percent) : CaseStatistic
    {
        /// <inheritdoc/>
        public override string Of(string response) => Invariant($"percentile {Percent} of {response}");

        /// <inheritdoc/>
        public override double Of(Span<double> values, bool isHigherBetter)
        {
            Sort(values, isHigherBetter);
            return values[Math.Clamp((int)Math.Ceiling(Percent * values.Length / 100) - 1, 0, values.Length - 1)];
        }
    }

    /// <summary>The worst case.</summary>
    public sealed record Worst : CaseStatistic
    {
        /// <inheritdoc/>
        public override string Of(string response) => $"worst of {response}";

        /// <inheritdoc/>
        public override double Of(Span<double> values, bool isHigherBetter)
        {
            Sort(values, isHigherBetter);
            return isHigherBetter ? values[0] : values[^1];
        }
    }

    /// <summary>Mean of a share of the cases, the worst ones (conditional value at risk).</summary>
    /// <param name="Percent">Above 0 and below 100; at least one case is taken.</param>
    /// <remarks>Source: R. T. Rockafellar and S. Uryasev, Optimization of conditional value-at-risk, Journal of Risk 2 (2000) 21-41,
    /// for equally likely cases, in whole cases.</remarks>
    public sealed record MeanOfWorst(double Percent) : CaseStatistic
    {
        /// <inheritdoc/>
        public override string Of(string response) => Invariant($"mean of worst {Percent} % of {response}");

        /// <inheritdoc/>
        public override double Of(Span<double> values, bool isHigherBetter)
        {
            Sort(values, isHigherBetter);
            var count = Math.Clamp((int)Math.Ceiling(Percent * values.Length / 100), 1, values.Length);
            var worst = isHigherBetter ? values[..count] : values[^count..];
            return worst.ContainsAnyExceptInRange(double.MinValue, double.MaxValue)
                ? isHigherBetter ? double.NegativeInfinity : double.PositiveInfinity
                : Moments(worst).Mean;
        }
    }

    /// <summary>Share of all cases in which the response lies within bounds.</summary>
    /// <param name="AtLeast">Smallest value that counts; minus infinity for any.</param>
    /// <param name="AtMost">Largest value that counts; infinity for any.</param>
    /// <param name="Bound">The bound as the study writes it: "at least 3".</param>
    public sealed record Share(double AtLeast, double AtMost, string Bound) : CaseStatistic
    {
        /// <inheritdoc/>
        public override string Of(string response) => $"share of cases with {response} {Bound}";

        /// <inheritdoc/>
        public override double Of(Span<double> values, bool isHigherBetter)
        {
            var count = 0;
            foreach (var value in values)
                count += value >= AtLeast && value <= AtMost ? 1 : 0;
            return (double)count / values.Length;
        }
    }
}
