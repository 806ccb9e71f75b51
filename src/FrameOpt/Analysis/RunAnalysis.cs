using FrameOpt.Numerics;
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
/// <param name="Smooth">A surface without a polynomial, over the readings less what blocks differ by; null where there is none.</param>
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
    /// <param name="isSelected">True to keep only the terms that the corrected Akaike criterion chooses.</param>
    public static RunAnalysis Of(RunTable table, MeasuredResponse response, SurfaceModel? wanted, bool isSelected)
    {
        int[] used = [.. Enumerable.Range(0, table.Runs.Count).Where(run => double.IsFinite(response.Measured.Values[run]))];
        double[] y = [.. used.Select(run => response.Measured.Values[run])];
        string[] blocks = [.. used.Select(run => table.Blocks[run]).Distinct()];
        var coded = used.Select(table.Coded).ToList();
        double[][] x = [.. used.Select((run, i) => (double[])[.. coded[i], .. SumCoded(blocks, table.Blocks[run])])];
        var model = wanted ?? largestFirst.FirstOrDefault(kind => CanEstimate(Terms(kind, table, blocks.Length), x), SurfaceModel.Linear);
        var terms = Terms(model, table, blocks.Length);
        var fit = isSelected
            ? StepwiseSelection.Fit(terms, x, y, ErrorKind.Measured, term => term.Powers.Skip(table.Factors.Count).Any(power => power > 0))
            : Regression.Fit(terms, x, y, ErrorKind.Measured);
        var hasSquares = fit.Terms.Any(term => term.Powers.Contains(2));
        return new RunAnalysis(table, response, used, model, blocks.Length > 1 ? blocks[1..] : [], fit,
            hasSquares ? ResponseSurface.Of(fit, table.Factors.Count, 0) : null,
            TwoLevelRuns.Of(coded, y, [.. used.Select(run => table.Blocks[run])]),
            GaussianProcess.Fit(coded, [.. y.Select((value, i) => value - Blocks(fit, table.Factors.Count, x[i]))]));
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

    private static bool CanEstimate(IReadOnlyList<ModelTerm> terms, double[][] x) => x.Length > terms.Count
        && new OrthogonalColumns(terms.Select(term => x.Select(term.Value).ToArray())).Kept.Count == terms.Count;
}

/// <summary>The runs of an orthogonal two-level plan, by contrasts.</summary>
/// <param name="Effects">Main effects first.</param>
/// <param name="LostInBlocks">Those that are the difference of the blocks.</param>
/// <param name="Order">Of the highest interaction that was looked at.</param>
/// <param name="Margins">What errors alone would reach; null where runs are repeated, or effects are fewer than three.</param>
/// <param name="Curvature">From runs at the centre; null without.</param>
public sealed record TwoLevelRuns(IReadOnlyList<Effect> Effects, IReadOnlyList<ModelTerm> LostInBlocks, int Order,
    LenthMargins? Margins, CurvatureTest? Curvature)
{
    private const int HighestOrder = 6;
    private const int FewestForMargins = 3;

    /// <summary>The effects of runs at -1 and +1, those at the centre aside.</summary>
    /// <param name="x">The factors of each run, coded.</param>
    /// <param name="y">The response.</param>
    /// <param name="blocks">Of each run; what blocks differ by is taken out first.</param>
    /// <returns>Null when a run is elsewhere, or the runs are not balanced and orthogonal.</returns>
    internal static TwoLevelRuns? Of(IReadOnlyList<double[]> x, IReadOnlyList<double> y, IReadOnlyList<string> blocks)
    {
        bool IsCentre(double[] run) => Array.TrueForAll(run, value => value == 0);
        int[] corners = [.. Enumerable.Range(0, x.Count).Where(i => !IsCentre(x[i]))];
        if (corners.Length < 4 || corners.Any(i => x[i].Any(value => value is not (1 or -1))))
            return null;
        var means = corners.ToLookup(i => blocks[i], i => y[i]).ToDictionary(block => block.Key, block => block.Average());
        double[][] at = [.. corners.Select(i => x[i])];
        double[] values = [.. corners.Select(i => y[i] - means[blocks[i]])];
        for (var order = Math.Min(at[0].Length, HighestOrder); order > 0; order--)
        {
            if (EffectsOrNull(at, values, order) is not { } all)
                continue;
            // What is the same throughout each block is the difference of the blocks, which was taken out.
            bool IsLost(Effect effect) => means.Count > 1 && corners.Index().GroupBy(run => blocks[run.Item])
                .All(block => block.Select(run => effect.Term.Value(at[run.Index])).Distinct().Count() == 1);
            List<Effect> effects = [.. all.Where(effect => !IsLost(effect))];
            var isRepeated = at.Select(run => string.Join('|', run)).Distinct().Count() < at.Length;
            var margins = isRepeated || effects.Count < FewestForMargins ? null : LenthMargins.Of([.. effects.Select(one => one.Value)]);
            return new TwoLevelRuns(effects, [.. all.Where(IsLost).Select(effect => effect.Term)], order, margins,
                CurvatureTest.Of([.. corners.Select(i => y[i])],
                [.. Enumerable.Range(0, x.Count).Where(i => IsCentre(x[i])).Select(i => y[i])], means.Count == 1));
        }

        return null;
    }

    private static IReadOnlyList<Effect>? EffectsOrNull(double[][] x, double[] y, int order)
    {
        try
        {
            return TwoLevelEffects.Of(x, y, order);
        }
        catch (ArgumentException)
        {
            return null; // Not orthogonal up to this order.
        }
    }
}

/// <summary>Whether the mean of the centre runs lies off the mean of the corners, which no two-level model allows for.</summary>
/// <param name="Difference">Mean of the corners less mean of the centre, in the response's unit.</param>
/// <param name="SumOfSquares">With one degree of freedom.</param>
/// <param name="P">Probability of a larger one by chance, against the repeats of the centre; null with one centre run.</param>
public sealed record CurvatureTest(double Difference, double SumOfSquares, double? P)
{
    /// <remarks>Source: R. H. Myers, D. C. Montgomery and C. M. Anderson-Cook 2009, Response Surface Methodology, section 4.5 (from
    /// memory): SS = nF nC (mean F - mean C)² / (nF + nC).</remarks>
    internal static CurvatureTest? Of(double[] corners, double[] centre, bool isOneBlock)
    {
        if (centre.Length == 0 || !isOneBlock)
            return null;
        var difference = corners.Average() - centre.Average();
        var sum = difference * difference * corners.Length * centre.Length / (corners.Length + centre.Length);
        if (centre.Length == 1)
            return new CurvatureTest(difference, sum, null);
        var mean = centre.Average();
        var pure = centre.Sum(value => (value - mean) * (value - mean)) / (centre.Length - 1);
        return new CurvatureTest(difference, sum, UpperTail.F(AnovaTable.Ratio(sum, pure), 1, centre.Length - 1));
    }
}
