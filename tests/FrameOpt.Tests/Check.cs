namespace FrameOpt.Tests;

/// <summary>The one assertion helper for numbers: a tolerance always says why it is what it is.</summary>
public static class Check
{
    /// <summary>Fails unless <paramref name="actual"/> lies within the relative or the absolute tolerance of
    /// <paramref name="expected"/>; a value without bound must be met as it is.</summary>
    /// <param name="because">Why this tolerance: printed digits of the source, rounding of the arithmetic, size of a sample.</param>
    public static void Close(double expected, double actual, double relative = 0, double absolute = 0, string because = "")
    {
        if (string.IsNullOrWhiteSpace(because))
            throw new ArgumentException("a tolerance needs its reason", nameof(because));
        var allowed = Math.Max(absolute, relative * Math.Abs(expected));
        if (double.IsFinite(expected) ? !(Math.Abs(actual - expected) <= allowed) : actual != expected)
            Assert.Fail($"expected {expected:R}, got {actual:R}, allowed {allowed:R} ({because})");
    }
}
