namespace FrameOpt.Numerics;

/// <summary>Quadratic equations.</summary>
public static class Quadratic
{
    /// <summary>The root of a x² + b x + c at which it falls as x grows; NaN when there is none.</summary>
    /// <param name="a">Coefficient of x².</param>
    /// <param name="b">Coefficient of x.</param>
    /// <param name="c">The constant term.</param>
    /// <remarks>x = (-b - s)/2a = 2c/(s - b) with s² = b² - 4ac: the form of the two that adds without cancelling.</remarks>
    public static double FallingRoot(double a, double b, double c)
    {
        var s = Math.Sqrt(b * b - 4 * a * c);
        return b <= 0 ? 2 * c / (s - b) : -(b + s) / (2 * a);
    }
}
