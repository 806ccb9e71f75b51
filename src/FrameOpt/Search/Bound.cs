namespace FrameOpt.Search;

/// <summary>A limit of a search.</summary>
/// <param name="Name">As the study writes it.</param>
/// <param name="AtLeast">Smallest value allowed; minus infinity for none.</param>
/// <param name="AtMost">Largest value allowed; infinity for none.</param>
public sealed record Bound(string Name, double AtLeast, double AtMost)
{
    /// <summary>True when a value keeps the limit. NaN does not.</summary>
    public bool Allows(double value) => value >= AtLeast && value <= AtMost;

    /// <summary>How far a value misses, as a share of the bound it misses (of one where that bound is zero); 0 when kept.</summary>
    public double Miss(double value)
    {
        if (double.IsNaN(value))
            return double.PositiveInfinity;
        if (value < AtLeast)
            return (AtLeast - value) / Scale(AtLeast);
        return value > AtMost ? (value - AtMost) / Scale(AtMost) : 0;
    }

    private static double Scale(double bound) => bound == 0 ? 1 : Math.Abs(bound);
}
