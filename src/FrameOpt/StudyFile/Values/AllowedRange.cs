namespace FrameOpt.StudyFile.Values;

/// <summary>Between which values a quantity makes sense, in the base unit of its dimension; outside it is a slip of sign or unit.</summary>
/// <param name="Low">Lower end.</param>
/// <param name="LowAllowed">True when the lower end itself is allowed.</param>
/// <param name="High">Upper end, allowed.</param>
/// <param name="Description">What must hold: "above 0 and at most 3 m".</param>
internal sealed record AllowedRange(double Low, bool LowAllowed, double High, string Description)
{
    /// <summary>Any number.</summary>
    public static readonly AllowedRange None = new(double.NegativeInfinity, true, double.PositiveInfinity, "any number");

    /// <summary>Zero or more.</summary>
    public static readonly AllowedRange NonNegative = new(0, true, double.PositiveInfinity, "0 or more");

    /// <summary>More than zero.</summary>
    public static AllowedRange PositiveUpTo(double high, string highText) => new(0, false, high, $"above 0 and at most {highText}");

    /// <summary>Zero or more.</summary>
    public static AllowedRange NonNegativeUpTo(double high, string highText) => new(0, true, high, $"from 0 to {highText}");

    /// <summary>As far to either side.</summary>
    public static AllowedRange Within(double high, string highText) => new(-high, true, high, $"between -{highText} and {highText}");

    /// <summary>Between two ends.</summary>
    public static AllowedRange Between(double low, double high, string lowText, string highText) =>
        new(low, true, high, $"between {lowText} and {highText}");

    public bool Contains(double value) => (LowAllowed ? value >= Low : value > Low) && value <= High;
}

/// <summary>What an air density can be.</summary>
internal static class AirDensity
{
    /// <summary>From about 11 km of the standard atmosphere to a very cold day at sea level.</summary>
    public static readonly AllowedRange AllowedRange = Values.AllowedRange.Between(0.3, 1.6, "0.3 kg/m³", "1.6 kg/m³");
}
