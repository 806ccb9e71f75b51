using FrameOpt.Plans;

namespace FrameOpt.Analysis;

/// <summary>What measured runs say of one response.</summary>
/// <param name="Table">All runs.</param>
/// <param name="Response">The one looked at.</param>
/// <param name="Used">Indices of the runs where it was read.</param>
/// <param name="Model">The kind of polynomial; its terms may be fewer after a selection.</param>
/// <param name="BlockNames">Of the blocks in the fit, which follow the factors as columns that add up to 0; empty for one block.</param>
/// <param name="Fit">In coded factors.</param>
/// <param name="Shape">Stationary point and curvatures; null without squares.</param>
/// <param name="TwoLevel">Effects by contrasts; null when the runs are not those of an orthogonal two-level plan.</param>
/// <param name="Smooth">A surface without a polynomial, over the readings less what blocks differ by; null where there is none, and for
/// runs in whole plots.</param>
public sealed record RunAnalysis(RunTable Table, MeasuredResponse Response, IReadOnlyList<int> Used, SurfaceModel Model,
    IReadOnlyList<string> BlockNames, RegressionFit Fit, ResponseSurface? Shape, TwoLevelRuns? TwoLevel, GaussianProcess? Smooth)
{
    private static readonly SurfaceModel[] largestFirst =
        [SurfaceModel.Quadratic, SurfaceModel.LinearAndSquares, SurfaceModel.Interactions, SurfaceModel.Linear];

    /// <summary>The runs of one response, analysed.</summary>
    /// <param name="table">All runs.</param>
    /// <param name="response">One of its responses, with three readings or more.</param>
    /// <param name="wanted">The kind of polynomial; null for the largest that these runs can estimate with something left for the
    /// error.</param>
    /// <param name="isSelected">True to keep only the terms that the corrected Akaike criterion chooses; not for runs in whole
    /// plots.</param>
    public static RunAnalysis Of(RunTable table, MeasuredResponse response, SurfaceModel? wanted, bool isSelected)
    {
        int[] used = [.. Enumerable.Range(0, table.Runs.Count).Where(run => double.IsFinite(response.Measured.Values[run]))];
        double[] y = [.. used.Select(run => response.Measured.Values[run])];
        string[] blocks = [.. used.Select(run => table.Blocks[run]).Distinct()];
        var coded = used.Select(table.Coded).ToList();
        double[][] x = [.. used.Select((run, i) => (double[])[.. coded[i], .. SumCoded(blocks, table.Blocks[run])])];
        string[]? plots = table.WholePlots.Count == 0 ? null : [.. used.Select(run => table.WholePlots[run])];
        if (plots?.Distinct().Count() == plots?.Length)
            plots = null;
        bool Can(SurfaceModel kind) => CanEstimate(Terms(kind, table, blocks.Length), x);
        var model = wanted ?? largestFirst.FirstOrDefault(
            kind => Can(kind) && (plots is null || IsJudged(Terms(kind, table, blocks.Length), x, plots)),
            largestFirst.FirstOrDefault(Can, SurfaceModel.Linear));
        var terms = Terms(model, table, blocks.Length);
        var fit = isSelected && plots is null
            ? StepwiseSelection.Fit(terms, x, y, ErrorKind.Measured, term => term.Powers.Skip(table.Factors.Count).Any(power => power > 0))
            : Regression.Fit(terms, x, y, ErrorKind.Measured, plots);
        var hasSquares = fit.Terms.Any(term => term.Powers.Contains(2));
        return new RunAnalysis(table, response, used, model, blocks.Length > 1 ? blocks[1..] : [], fit,
            hasSquares ? ResponseSurface.Of(fit, table.Factors.Count, 0) : null,
            TwoLevelRuns.Of(coded, y, [.. used.Select(run => table.Blocks[run])], plots),
            plots is not null ? null
                : GaussianProcess.Fit(coded, [.. y.Select((value, i) => value - Blocks(fit, table.Factors.Count, x[i]))]));
    }

    /// <summary>What a run's block adds, by the fit.</summary>
    private static double Blocks(RegressionFit fit, int factors, double[] run) => fit.Coefficients
        .Where(one => one.Term.Powers.Skip(factors).Any(power => power > 0)).Sum(one => one.Value * one.Term.Value(run));

    /// <summary>The fitted response of an average block.</summary>
    /// <param name="coded">The factors, coded.</param>
    public double Predict(IReadOnlyList<double> coded) => Fit.Predict(WithBlocks(coded));

    /// <summary>Where one further run, in an average block, would lie; null where nothing can be tested.</summary>
    public Interval? PredictionInterval(IReadOnlyList<double> coded, double confidence) =>
        Fit.PredictionInterval(WithBlocks(coded), confidence);

    /// <summary>The model's value less the measured one of each run used; empty without predictions.</summary>
    public IReadOnlyList<double> ModelErrors() => Response.Predicted is not { } predicted ? []
        : [.. Used.Select(run => predicted.Values[run] - Response.Measured.Values[run])];

    private double[] WithBlocks(IReadOnlyList<double> coded) => [.. coded, .. new double[BlockNames.Count]];

    /// <summary>1 in its own column, -1 everywhere for the first block: the constant is the mean of the blocks.</summary>
    private static IEnumerable<double> SumCoded(string[] blocks, string own) =>
        blocks.Skip(1).Select(block => own == block ? 1.0 : own == blocks[0] ? -1 : 0);

    /// <summary>The constant, the blocks, and then what the model has of the factors.</summary>
    private static List<ModelTerm> Terms(SurfaceModel model, RunTable table, int blocks)
    {
        var (factors, columns) = (table.Factors.Count, table.Factors.Count + blocks - 1);
        ModelTerm Wide(ModelTerm term) => new([.. term.Powers, .. new int[blocks - 1]]);
        var own = ModelTerms.Of(model, factors).Select(Wide).ToList();
        return [own[0], .. Enumerable.Range(factors, blocks - 1).Select(b => new ModelTerm([.. Enumerable.Range(0, columns)
            .Select(c => c == b ? 1 : 0)])), .. own.Skip(1)];
    }

    /// <summary>Whether something is left to judge both kinds of terms by.</summary>
    private static bool IsJudged(IReadOnlyList<ModelTerm> terms, double[][] x, string[] plots)
    {
        var errors = WholePlotErrors.Of(terms, [.. terms.Select(term => x.Select(term.Value).ToArray())], new double[x.Length],
            new PlotMeans(plots));
        return errors.PlotDegreesOfFreedom > 0 && errors.RunDegreesOfFreedom > 0;
    }

    private static bool CanEstimate(IReadOnlyList<ModelTerm> terms, double[][] x) => x.Length > terms.Count
        && new OrthogonalColumns(terms.Select(term => x.Select(term.Value).ToArray())).Kept.Count == terms.Count;
}
