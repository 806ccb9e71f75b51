namespace FrameOpt.Analysis;

/// <summary>An analysis of variance. Sums of squares are in the square of the response's unit, about the mean (about 0 for a model without constant).</summary>
public sealed class AnovaTable
{
    internal AnovaTable(ErrorKind errors, IReadOnlyList<LineSums> sums, double residualSumOfSquares, int residualDegrees)
    {
        Errors = errors;
        ResidualSumOfSquares = residualSumOfSquares;
        ResidualDegrees = residualDegrees;
        ModelSumOfSquares = sums.Sum(line => line.Sequential);
        ModelDegrees = sums.Sum(line => line.Degrees);
        Lines = [.. sums.Select(line =>
        {
            var (f, p) = Test(line.Adjusted, line.Degrees);
            var percent = TotalSumOfSquares > 0 ? 100 * line.Adjusted / TotalSumOfSquares : 0;
            return new VarianceLine(line.Source, line.Degrees, line.Sequential, line.Adjusted, percent, f, p);
        })];
        (F, P) = Test(ModelSumOfSquares, ModelDegrees);
    }

    /// <summary>Whether the runs were measured or computed.</summary>
    public ErrorKind Errors { get; }

    /// <summary>Why there are no F ratios and p-values; null when there are.</summary>
    public string? NoTestsBecause => Errors switch
    {
        ErrorKind.Deterministic => "the runs are computed: repeating one gives the same number, so there is no error to test against; "
            + "judge by contributions and cross-validated error",
        _ when ResidualDegrees == 0 => "as many terms as runs: nothing is left to judge the error by",
        _ => null,
    };

    /// <summary>The effects or terms, in the order of the model.</summary>
    public IReadOnlyList<VarianceLine> Lines { get; }

    /// <summary>Explained by all lines together.</summary>
    public double ModelSumOfSquares { get; }

    /// <summary>Degrees of freedom of all lines together.</summary>
    public int ModelDegrees { get; }

    /// <summary>Left unexplained.</summary>
    public double ResidualSumOfSquares { get; }

    /// <summary>Degrees of freedom left; 0 for a saturated model.</summary>
    public int ResidualDegrees { get; }

    /// <summary>Explained and not.</summary>
    public double TotalSumOfSquares => ModelSumOfSquares + ResidualSumOfSquares;

    /// <summary>Root of the residual mean square, in the response's unit: standard deviation of measured runs, size of the misfit of computed ones;
    /// null for a saturated model.</summary>
    public double? ResidualDeviation => ResidualDegrees > 0 ? Math.Sqrt(ResidualSumOfSquares / ResidualDegrees) : null;

    /// <summary>Explained part of the total, 0 to 1; 1 for runs that do not differ.</summary>
    public double RSquared => TotalSumOfSquares > 0 ? ModelSumOfSquares / TotalSumOfSquares : 1;

    /// <summary>The same for mean squares, so that useless terms lower it; null for a saturated model.</summary>
    public double? AdjustedRSquared => ResidualDegrees == 0 ? null : TotalSumOfSquares > 0
        ? 1 - (ResidualSumOfSquares / ResidualDegrees / (TotalSumOfSquares / (ModelDegrees + ResidualDegrees))) : 1;

    /// <summary>Of the whole model; infinite for an exact fit; null where nothing can be tested.</summary>
    public double? F { get; }

    /// <summary>Of the whole model; null where nothing can be tested.</summary>
    public double? P { get; }

    /// <summary>F and p of a sum of squares against the residual; nulls where nothing can be tested.</summary>
    private (double? F, double? P) Test(double sum, int degrees)
    {
        if (NoTestsBecause is not null || degrees == 0)
            return (null, null);
        var f = Ratio(sum / degrees, ResidualSumOfSquares / ResidualDegrees);
        return (f, UpperTail.F(f, degrees, ResidualDegrees));
    }

    /// <summary>Over a denominator that may be 0: infinite then, or 0 when there is nothing above it either.</summary>
    internal static double Ratio(double above, double below) => above == 0 ? 0 : above / below;
}
