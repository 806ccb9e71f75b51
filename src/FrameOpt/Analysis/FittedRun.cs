namespace FrameOpt.Analysis;

/// <summary>One run beside its fit. Values are in the response's unit.</summary>
/// <param name="Observed">The response of the run.</param>
/// <param name="Fitted">What the model gives there.</param>
/// <param name="Residual">Observed less fitted.</param>
/// <param name="Leverage">How far the run decides its own fit, 0 to 1.</param>
/// <param name="InternallyStudentised">Residual over its deviation, from all runs; null where the run decides its own fit, or for an exact fit.</param>
/// <param name="ExternallyStudentised">The same with the deviation from the other runs; null also where those leave nothing to judge it by.</param>
/// <param name="CookDistance">How far the whole fit moves without this run; null where <paramref name="InternallyStudentised"/> is.</param>
/// <param name="LeftOutError">Observed less what the model gives when fitted without this run; null where the run decides its own fit.</param>
public sealed record FittedRun(double Observed, double Fitted, double Residual, double Leverage,
    double? InternallyStudentised, double? ExternallyStudentised, double? CookDistance, double? LeftOutError)
{
    /// <summary>A leverage closer to 1 than this is 1: the run alone decides its fit.</summary>
    private const double Decided = 1e-10;

    /// <summary>A run with its diagnostics.</summary>
    /// <param name="observed">The response.</param>
    /// <param name="residual">Observed less fitted.</param>
    /// <param name="leverage">0 to 1.</param>
    /// <param name="residualSumOfSquares">Of all runs.</param>
    /// <param name="residualDegrees">Runs less terms.</param>
    /// <param name="terms">Of the model.</param>
    /// <remarks>Source: R. D. Cook 1977, Detection of influential observation in linear regression; R. D. Cook and S. Weisberg 1982 (from memory).</remarks>
    internal static FittedRun Of(double observed, double residual, double leverage, double residualSumOfSquares, int residualDegrees, int terms)
    {
        var free = 1 - leverage;
        if (free < Decided)
            return new FittedRun(observed, observed - residual, residual, leverage, null, null, null, null);
        var leftOut = residual / free;
        if (residualSumOfSquares == 0)
            return new FittedRun(observed, observed - residual, residual, leverage, null, null, null, leftOut);
        var inside = residual / Math.Sqrt(residualSumOfSquares / residualDegrees * free);
        var cook = inside * inside / terms * leverage / free;

        // The others' deviation has one degree of freedom less, and none of this run's share.
        var othersSum = residualDegrees - (inside * inside);
        double? outside = residualDegrees > 1 && othersSum > 0 ? inside * Math.Sqrt((residualDegrees - 1) / othersSum) : null;
        return new FittedRun(observed, observed - residual, residual, leverage, inside, outside, cook, leftOut);
    }
}
