namespace FrameOpt.Plans;

/// <summary>A limit in coded units: the weighted sum of the factors is at most a bound.</summary>
/// <param name="Weights">One a factor.</param>
/// <param name="AtMost">The bound.</param>
public sealed record LinearLimit(IReadOnlyList<double> Weights, double AtMost)
{
    /// <summary>Whether a point keeps the limit, rounding forgiven.</summary>
    public bool Allows(double[] coded)
    {
        var sum = 0.0;
        for (var f = 0; f < coded.Length; f++)
            sum += Weights[f] * coded[f];
        return sum <= AtMost + 1e-9;
    }
}
