using FrameOpt.Analysis;
using FrameOpt.Plans;
using static FrameOpt.Tests.Analysis.PublishedFigures;

namespace FrameOpt.Tests.Analysis;

/// <summary>Published data; figures with ten digits were recomputed from it by separate programs outside this project.</summary>
public class WorkedRegressionTests
{
    /// <summary>Montgomery, Design and Analysis of Experiments, unreplicated 2^4 example, reduced model.</summary>
    [Fact]
    public void Filtration_rate_reduced_model()
    {
        var fit = Fitted("plan-filtration-rate.csv", ["x1", "x2", "x3", "x4"], "y", "1", "x1", "x3", "x4", "x1x3", "x1x4");
        Are([70.0625, 10.8125, 4.9375, 7.3125, -9.0625, 8.3125], fit);
        Assert.All(fit.Coefficients, coefficient => Near(1.1043238882, coefficient.StandardError));
        Assert.All(fit.Coefficients.Skip(1), coefficient => Near(1, coefficient.VarianceInflation));
        Near(195.125, fit.Anova.ResidualSumOfSquares);
        Assert.Equal(10, fit.Anova.ResidualDegreesOfFreedom);
        Near(4.417295553, fit.Anova.ResidualDeviation);
        Near(0.965952342, fit.Anova.RSquared);
        Near(0.948928513, fit.Anova.AdjustedRSquared);
        Near(499.52, fit.Press);
        Near(0.9128379955, fit.PredictedRSquared);
        Assert.Null(fit.LackOfFit);
        Assert.Null(fit.NoTestsReason);
    }

    /// <summary>Czitrom and Spagon 1997, as in the NIST/SEMATECH e-Handbook of Statistical Methods, 5.4.7.3.</summary>
    [Fact]
    public void Tungsten_uniformity_second_order()
    {
        var fit = Fitted("plan-cvd-tungsten.csv", ["x1", "x2"], "uniformity", Quadratic);
        Are([5.8661259703, -1.9096703516, -0.2240812668, 1.6861733783, 0.1337334835, 0.0337334835], fit);
        AreErrors([0.4177266299, 0.3610305598, 0.3610305598, 0.7176550592, 0.6073297824, 0.6073297824], fit);
        Near(2.617549433, fit.Anova.ResidualSumOfSquares);
        Near(20.38181818, fit.Anova.TotalSumOfSquares);
        Near(0.8715742919, fit.Anova.RSquared);
        Near(0.7431485837, fit.Anova.AdjustedRSquared);
        Near(13.04026066, fit.Press);
        Near(1.1466666667, fit.LackOfFit!.PureErrorSumOfSquares);
        Near(1.4708827664, fit.LackOfFit.SumOfSquares);
        Assert.Equal((2, 3), (fit.LackOfFit.PureErrorDegreesOfFreedom, fit.LackOfFit.DegreesOfFreedom));
        Near(0.8551643991, fit.LackOfFit.F);
        Near(0.578764707, fit.LackOfFit.P);
        var surface = ResponseSurface.Of(fit);
        AreValues([0.088137437, 1.1185661705], surface.StationaryPoint!);
        Near(5.656644383, surface.Value(surface.StationaryPoint!));
        AreValues([0.9283015183, -0.7608345513], surface.Eigenvalues);
        Assert.Equal(SurfaceShape.Saddle, surface.Shape);

        var reduced = Fitted("plan-cvd-tungsten.csv", ["x1", "x2"], "uniformity", "1", "x1", "x2", "x1x2");
        Are([5.9272727273, -1.9096703516, -0.2240812668, 1.6861733783], reduced);
        Near(2.642973445, reduced.Anova.ResidualSumOfSquares);
        Near(0.870326905, reduced.Anova.RSquared);
    }

    /// <summary>The other response of the same plan.</summary>
    [Fact]
    public void Tungsten_stress_second_order()
    {
        var fit = Fitted("plan-cvd-tungsten.csv", ["x1", "x2"], "stress", Quadratic);
        Are([7.7900399911, 0.735932676, 0.4968628623, 0.0694306685, -0.5287277041, -0.1187277041], fit);
        AreErrors([0.0444951423, 0.0384560259, 0.0384560259, 0.0764427299, 0.0646911715, 0.0646911715], fit);
        Near(0.02969858562, fit.Anova.ResidualSumOfSquares);
        Near(3.600054545, fit.Anova.TotalSumOfSquares);
        Near(0.9917505179, fit.Anova.RSquared);
        Near(0.9835010357, fit.Anova.AdjustedRSquared);
        Near(0.1032749488, fit.Press);
        Near(0.2251827515, fit.LackOfFit!.F);
        Near(0.873128118, fit.LackOfFit.P);
        var surface = ResponseSurface.Of(fit);
        AreValues([0.8496447507, 2.3408785227], surface.StationaryPoint!);
        AreValues([-0.1158090796, -0.5316463287], surface.Eigenvalues);
        Assert.Equal(SurfaceShape.Maximum, surface.Shape);

        var reduced = Fitted("plan-cvd-tungsten.csv", ["x1", "x2"], "stress", "1", "x1", "x2", "x1^2");
        Are([7.7341024941, 0.735932676, 0.4968628623, -0.4942554116], reduced);
        Near(0.05460548879, reduced.Anova.ResidualSumOfSquares);
        Near(0.9848320385, reduced.Anova.RSquared);
    }

    /// <summary>Dean, Voss and Draguljic 2017; the order of the rows is inferred, the figures are recomputed for it.</summary>
    [Fact]
    public void Box_Behnken_of_three_factors()
    {
        string[] names = ["1", "x1", "x2", "x3", "x1^2", "x2^2", "x3^2", "x1x2", "x1x3", "x2x3"];
        var fit = Fitted("plan-box-behnken-3.csv", ["x1", "x2", "x3"], "y", names);
        Are([80, 0.625, 22.625, -7, 16, -20, 18.25, 9, -9.25, 1.25], fit);
        AreErrors([8.46631982792, 6.69321351392, 6.69321351392, 6.69321351392, 9.2259581384, 9.2259581384, 9.2259581384,
            9.46563332724, 9.46563332724, 9.46563332724], fit);
        Near(2508.75, fit.Anova.ResidualSumOfSquares);
        Near(14, fit.LackOfFit!.PureErrorSumOfSquares);
        Assert.Equal(4, fit.LackOfFit.PureErrorDegreesOfFreedom);
        Near(0.785127516576, fit.Anova.RSquared);
        AreValues([3.125, 4095.125, 392, 1071.098856, 1530.562135, 1402.368421, 324, 342.25, 6.25],
            [.. fit.Anova.Lines.Select(line => line.SequentialSumOfSquares)], 5.1e-7);
    }

    /// <summary>By hand: sums of squares and products of the columns 4, 2 and 2, of y = x1 + x2 about its mean 10; alone x1 takes
    /// 4 - 2^2 / 2 = 2 and x2 2 - 2^2 / 4 = 1 of it.</summary>
    [Fact]
    public void What_terms_explain_together_only_is_told()
    {
        double[][] runs = [[-1, -1], [1, 1], [-1, 0], [1, 0]];
        var fit = Regression.Fit(ModelTerms.Of(SurfaceModel.Linear, 2), runs, [-2, 2, -1, 1], ErrorKind.Deterministic);
        Check.Close(70, fit.Anova.UnassignedPercent, relative: 1e-12, because: "rounding");
        double[][] square = [[-1, -1], [1, 1], [-1, 1], [1, -1]];
        var orthogonal = Regression.Fit(ModelTerms.Of(SurfaceModel.Linear, 2), square, [-2, 2, 0, 0], ErrorKind.Deterministic);
        Check.Close(0, orthogonal.Anova.UnassignedPercent, absolute: 1e-12, because: "rounding");
    }
}
