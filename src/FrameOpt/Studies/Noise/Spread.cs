using MathNet.Numerics.Distributions;

namespace FrameOpt.Studies.Noise;

/// <summary>How far a number may be off from what the study says, as a distribution of the deviation.</summary>
public abstract record Spread
{
    private Spread()
    {
    }

    /// <summary>The deviation that a share of all cases does not exceed.</summary>
    /// <param name="probability">Above 0 and below 1.</param>
    public abstract double Quantile(double probability);

    /// <summary>Normal, cut off where it is given ends.</summary>
    /// <param name="StandardDeviation">Of the uncut distribution; above 0.</param>
    /// <param name="From">Smallest deviation; minus infinity for none.</param>
    /// <param name="To">Largest deviation; infinity for none.</param>
    public sealed record Normal(
        double StandardDeviation, double From = double.NegativeInfinity, double To = double.PositiveInfinity) : Spread
    {
        /// <inheritdoc/>
        public override double Quantile(double probability)
        {
            double low = Share(From), high = Share(To);
            return Math.Clamp(StandardDeviation * Numerics.Quantile.Normal(low + probability * (high - low)), From, To);
        }

        private double Share(double deviation) => MathNet.Numerics.Distributions.Normal.CDF(0, StandardDeviation, deviation);
    }

    /// <summary>Every deviation in a range alike.</summary>
    /// <param name="From">Smallest.</param>
    /// <param name="To">Largest, above the smallest.</param>
    public sealed record Uniform(double From, double To) : Spread
    {
        /// <inheritdoc/>
        public override double Quantile(double probability) => From + probability * (To - From);
    }

    /// <summary>Most often the peak, never beyond the ends.</summary>
    /// <param name="From">Smallest.</param>
    /// <param name="Peak">Between the ends.</param>
    /// <param name="To">Largest, above the smallest.</param>
    public sealed record Triangle(double From, double Peak, double To) : Spread
    {
        /// <inheritdoc/>
        public override double Quantile(double probability) => Triangular.InvCDF(From, To, Peak, probability);
    }

    /// <summary>Measured deviations, each as likely as the others.</summary>
    /// <param name="Deviations">One or more, in ascending order.</param>
    public sealed record Table(IReadOnlyList<double> Deviations) : Spread
    {
        /// <inheritdoc/>
        public override double Quantile(double probability) =>
            Deviations[Math.Min((int)(probability * Deviations.Count), Deviations.Count - 1)];
    }
}
