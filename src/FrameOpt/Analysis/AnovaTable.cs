using FrameOpt.Numerics;

namespace FrameOpt.Analysis;

/// <summary>An analysis of variance. Sums of squares are in the square of the response's unit, about the mean (about 0 for a model without
/// constant).</summary>
public sealed class AnovaTable
{
    internal AnovaTable(ErrorKind errors, IReadOnlyList<SumsOfSquares> sums, double residualSumOfSquares, int residualDegrees)
    {
        Errors = errors;
        ResidualSumOfSquares = residualSumOfSquares;
        ResidualDegreesOfFreedom = residualDegrees;
        ModelSumOfSquares = sums.Sum(line => line.Sequential);
        ModelDegreesOfFreedom = sums.Sum(line => line.DegreesOfFreedom);
        Lines = [.. sums.Select(line =>
        {
            var (f, p) = Test(line.Adjusted, line.DegreesOfFreedom);
            var percent = TotalSumOfSquares > 0 ? 100 * line.Adjusted / TotalSumOfSquares : 0;
            return new AnovaRow(line.Source, line.DegreesOfFreedom, line.Sequential, line.Adjusted, percent, f, p);
        })];
        (F, P) = Test(ModelSumOfSquares, ModelDegreesOfFreedom);
    }

    /// <summary>Whether the runs were measured or computed.</summary>
    public ErrorKind Errors { get; }

    /// <summary>Why there are no F ratios and p-values; null when there are.</summary>
    public string? NoTestsReason => Errors switch
    {
        ErrorKind.Deterministic => "the runs are computed: repeating one gives the same number, so there is no error to test against; "
            + "judge by contributions and cross-validated error",
        _ when ResidualDegreesOfFreedom == 0 => "as many terms as runs: no degrees of freedom are left for the error",
        _ => null,
    };

    /// <summary>The effects or terms, in the order of the model.</summary>
    public IReadOnlyList<AnovaRow> Lines { get; }

    /// <summary>Explained by all lines together.</summary>
    public double ModelSumOfSquares { get; }

    /// <summary>Degrees of freedom of all lines together.</summary>
    public int ModelDegreesOfFreedom { get; }

    /// <summary>Left unexplained.</summary>
    public double ResidualSumOfSquares { get; }

    /// <summary>Degrees of freedom left; 0 for a saturated model.</summary>
    public int ResidualDegreesOfFreedom { get; }

    /// <summary>Explained and unexplained.</summary>
    public double TotalSumOfSquares => ModelSumOfSquares + ResidualSumOfSquares;

    /// <summary>Root of the residual mean square, in the response's unit: standard deviation of measured runs, magnitude of the misfit for
    /// computed ones; null for a saturated model.</summary>
    public double? ResidualDeviation => ResidualDegreesOfFreedom > 0 ? Math.Sqrt(ResidualSumOfSquares / ResidualDegreesOfFreedom) : null;

    /// <summary>Explained part of the total, 0 to 1; 1 for runs that do not differ.</summary>
    public double RSquared => TotalSumOfSquares > 0 ? ModelSumOfSquares / TotalSumOfSquares : 1;

    /// <summary>What the lines explain together and none of them alone, as a part of the total, %: 0 in an orthogonal plan, above 0 where
    /// terms go together over the runs, below 0 where they work against each other.</summary>
    public double UnassignedPercent => TotalSumOfSquares > 0
        ? 100 * (ModelSumOfSquares - Lines.Sum(line => line.AdjustedSumOfSquares)) / TotalSumOfSquares : 0;

    /// <summary>The explained part for mean squares, so that useless terms lower it; null for a saturated model.</summary>
    public double? AdjustedRSquared => ResidualDegreesOfFreedom == 0 ? null : TotalSumOfSquares > 0
        ? 1 - (ResidualSumOfSquares / ResidualDegreesOfFreedom / (TotalSumOfSquares / (ModelDegreesOfFreedom + ResidualDegreesOfFreedom)))
            : 1;

    /// <summary>Of the whole model; infinite for an exact fit; null where nothing can be tested.</summary>
    public double? F { get; }

    /// <summary>Of the whole model; null where nothing can be tested.</summary>
    public double? P { get; }

    /// <summary>F and p of a sum of squares against the residual; nulls where nothing can be tested.</summary>
    private (double? F, double? P) Test(double sum, int degrees)
    {
        if (NoTestsReason is not null || degrees == 0)
            return (null, null);
        var f = Ratio(sum / degrees, ResidualSumOfSquares / ResidualDegreesOfFreedom);
        return (f, UpperTail.F(f, degrees, ResidualDegreesOfFreedom));
    }

    /// <summary>Over a denominator that may be 0: infinite then, or 0 when there is nothing above it either.</summary>
    internal static double Ratio(double above, double below) => above == 0 ? 0 : above / below;
}

/// <summary>One line of an analysis of variance. Sums of squares are in the square of the response's unit.</summary>
/// <param name="Source">The effect or model term.</param>
/// <param name="DegreesOfFreedom">Degrees of freedom.</param>
/// <param name="SequentialSumOfSquares">Of this line after those above it; the lines add up to the model's.</param>
/// <param name="AdjustedSumOfSquares">Of this line after every other that does not contain it; the same whatever the order of lines and the
/// units of factors.</param>
/// <param name="ContributionPercent">The adjusted sum as a part of the total, %. Adds up to 100 with the residual's in an orthogonal plan
/// only.</param>
/// <param name="F">Adjusted mean square over the residual's, infinite for an exact fit; null where nothing can be tested.</param>
/// <param name="P">Probability of a larger F by chance; null where nothing can be tested.</param>
public sealed record AnovaRow(string Source, int DegreesOfFreedom, double SequentialSumOfSquares, double AdjustedSumOfSquares,
    double ContributionPercent, double? F, double? P);

/// <summary>Sums of squares of one source before they are tested.</summary>
internal sealed record SumsOfSquares(string Source, int DegreesOfFreedom, double Sequential, double Adjusted);

/// <summary>Kind of error of the runs, which decides whether effects can be tested.</summary>
public enum ErrorKind
{
    /// <summary>Runs that were measured: the same design run again gives another number, so that effects can be tested against that
    /// error.</summary>
    Measured,

    /// <summary>Runs of a computed model: the same design gives the same number, so that there is no error to test against. Standard
    /// errors, F ratios, p-values and intervals are null; contributions and the cross-validated error are used instead.</summary>
    Deterministic,
}

/// <summary>The columns of one source of an analysis of variance: one for a model term, several for a factor of levels.</summary>
/// <param name="Source">Its name.</param>
/// <param name="Columns">One value for each run in each.</param>
/// <param name="IsContainedIn">Whether another source, by its place in the list, contains this one.</param>
internal sealed record ColumnGroup(string Source, IReadOnlyList<double[]> Columns, Func<int, bool> IsContainedIn)
{
    /// <summary>Sequential and adjusted sums of squares of each source.</summary>
    /// <param name="groups">The constant, where there is one, goes first.</param>
    /// <param name="basis">Of all their columns.</param>
    /// <param name="along">The response along it.</param>
    /// <remarks>Source: adjusted sums respect marginality, each source after all others that do not contain it ("type II", Yates 1934;
    /// Nelder 1977; from memory). They are worked in the basis, where a column is as long as there are columns, not runs.</remarks>
    public static IReadOnlyList<SumsOfSquares> SumsOf(IReadOnlyList<ColumnGroup> groups, OrthogonalColumns basis, double[] along)
    {
        var owner = groups.SelectMany((group, g) => group.Columns.Select(_ => g)).ToArray();
        var columns = basis.RColumns.ToLookup(column => owner[column.Index], column => column.Values);
        var sequential = Enumerable.Range(0, along.Length).ToLookup(j => owner[basis.Kept[j]], j => along[j] * along[j]);
        return [.. groups.Select((group, g) =>
        {
            double[][] others = [.. Enumerable.Range(0, groups.Count).Where(other => other != g && !group.IsContainedIn(other))
                .SelectMany(other => columns[other])];
            var adjusted = new OrthogonalColumns([.. others, .. columns[g]]);
            var parts = adjusted.Project(along).Along.Where((_, j) => adjusted.Kept[j] >= others.Length);
            return new SumsOfSquares(group.Source, sequential[g].Count(), sequential[g].Sum(), parts.Sum(part => part * part));
        })];
    }
}
