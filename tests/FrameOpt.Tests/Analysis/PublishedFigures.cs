using FrameOpt.Analysis;
using FrameOpt.Plans;

namespace FrameOpt.Tests.Analysis;

/// <summary>Fits to published data and compares with published figures.</summary>
internal static class PublishedFigures
{
    public const string Printed = "printed digits of the figures";

    public static readonly string[] Quadratic = ["1", "x1", "x2", "x1x2", "x1^2", "x2^2"];

    public static RegressionFit Fitted(string file, string[] factors, string response, params string[] terms)
    {
        var table = ReferenceTable.Read(file);
        return Regression.Fit(ModelTerms.Parse(factors.Length, terms), table.Columns(factors), table.Column(response), ErrorKind.Measured);
    }

    public static void Are(double[] expected, RegressionFit fit) => AreValues(expected, [.. fit.Coefficients.Select(c => c.Value)]);

    public static void AreErrors(double[] expected, RegressionFit fit) =>
        AreValues(expected, [.. fit.Coefficients.Select(c => c.StandardError!.Value)]);

    public static void AreValues(double[] expected, IReadOnlyList<double> actual, double absolute = 1e-9)
    {
        Assert.Equal(expected.Length, actual.Count);
        foreach (var (want, got) in expected.Zip(actual))
            Check.Close(want, got, relative: absolute == 1e-9 ? 1e-9 : 0, absolute: absolute, because: Printed);
    }

    public static void Near(double expected, double? actual, double relative = 1e-9) =>
        Check.Close(expected, actual!.Value, relative: relative, because: Printed);
}
