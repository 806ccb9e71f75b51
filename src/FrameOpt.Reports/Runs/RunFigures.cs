using FrameOpt.Analysis;
using FrameOpt.Plans;
using FrameOpt.Reports.Text;
using static System.FormattableString;

namespace FrameOpt.Reports.Runs;

/// <summary>Names and figures of measured runs, to as many digits as can be checked against a handbook.</summary>
internal static class RunFigures
{
    /// <summary>Of intervals.</summary>
    public const double Confidence = 0.95;

    /// <summary>A probability below this is worth a word.</summary>
    public const double Small = 0.05;

    /// <summary>Of a place to set a factor to.</summary>
    private const int PlaceDigits = 4;

    /// <summary>The factors of a design in words.</summary>
    public static string Place(RunTable table, IReadOnlyList<double> natural) => string.Join(", ", table.Factors.Select((factor, f) =>
        $"{factor.Name} {NumberFormat.SignificantDigits(natural[f], PlaceDigits)} {factor.Unit}".TrimEnd()));

    public static List<string> Names(RunAnalysis analysis) =>
        [.. analysis.Table.Factors.Select(factor => factor.Name), .. analysis.BlockNames.Select(block => $"block {block}")];

    public static string Join(IEnumerable<ModelTerm> terms, List<string> names) =>
        string.Join(", ", terms.Select(term => term.NamedWith(names)));

    public static string Title(string name, string unit) => unit.Length == 0 ? name : $"{name} [{unit}]";

    public static string Optional(double? value, Func<double, string> text) => value is { } number ? text(number) : "";

    public static string Ratio(double value) => double.IsInfinity(value) ? "beyond any" : Invariant($"{value:0.00}");

    public static string P(double p) => p < 0.0001 ? "below 0.0001" : Invariant($"{p:0.0000}");

    /// <summary>A value to six digits.</summary>
    public static string Digits(double value, string unit) => $"{NumberFormat.SignificantDigits(value, 6)} {unit}".TrimEnd();
}
