using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.ProductLine;

/// <summary>Lines that are nearly as good, and how much hangs on these customers and weights.</summary>
internal static class LineSurenessSection
{
    public static IEnumerable<AnswerSection> Of(ProductLineResult result)
    {
        if (result.Sureness is not { } sureness)
            yield break;
        var rows = sureness.Simpler.Where(line => Above(result, line) <= LineSureness.Nearly)
            .DistinctBy(line => string.Join(';', line.Designs))
            .OrderBy(line => LineSureness.Jigs(line.Designs)).ThenBy(line => NotRound(line.Designs)).ThenBy(line => line.Value).ToList();
        var own = result.Geometries.Select(geometry => geometry.Design).ToList();
        yield return new AnswerSection("Nearly as good, and how sure this line is",
            [
                $"This line needs {NumberFormat.Count(LineSureness.Jigs(own), "jig")}, holes apart; "
                    + $"{NumberFormat.Count(NotRound(own))} of its "
                    + $"{ProductLineText.Geometries(own.Count)} {(NotRound(own) == 1 ? "has" : "have")} a hole that is not at whole 5 mm. "
                    + (rows.Count == 0 ? "No line with fewer jigs or rounder holes is within 2 % of it."
                        : "Simpler to make and within 2 % of it, the fewest jigs first:"),
                .. Leeway(result, sureness), .. Samples(result, sureness), .. Weights(result, sureness),
            ],
            rows.Count == 0 ? null : new AnswerTable(["line", "geometries", "jigs", "not round", ProductLineText.Value(result.Setting),
                "above"],
                [.. rows.Select(line => (IReadOnlyList<string>)
                [
                    Kind(line.Kind), string.Join("; ", line.Designs.Select(design => ProductLineText.Design(result.Study, design))),
                    NumberFormat.Count(LineSureness.Jigs(line.Designs)), NumberFormat.Count(NotRound(line.Designs)),
                    ProductLineText.Amount(result.Setting, line.Value), Percent(Above(result, line)),
                ])]));
    }

    /// <summary>"best in 2 of 8 samples of the customers, else at most 1.3 % above the best": never leave a proof without it.</summary>
    public static string Beside(ProductLineResult result)
    {
        if (result.Sureness is not { Samples: { Count: > 0 } samples })
            return "";
        var best = samples.Count(trial => trial.Above < 1e-9);
        return best == samples.Count ? $" for these customers, and for {samples.Count} samples drawn from them"
            : $" for these customers; of {samples.Count} samples drawn from them it is the best for {best}, and at most "
                + $"{Percent(samples.Max(trial => trial.Above))} above the best for the others";
    }

    private static IEnumerable<string> Leeway(ProductLineResult result, LineSureness sureness) => sureness.Leeway
        .Select(leeway => (Leeway: leeway, Name: result.Geometries.First(geometry => geometry.Candidate
            == result.Solution.Chosen[leeway.Geometry]).Name))
        .OrderBy(item => item.Name, StringComparer.Ordinal)
        .Select(item => item.Leeway.Count < 2 ? $"{item.Name}: no other candidate in its place stays within 2 %."
            : $"{item.Name}: {NumberFormat.Count(item.Leeway.Count - 1, "other candidate")} in its place would keep the line within 2 %: "
                + string.Join(", ", result.Study.Factors.Select((factor, f) => (factor, f)).Where(pair => pair.factor.IsSwept)
                    .Select(pair => $"{pair.factor.Input.ShortName} {GeometryText.Value(pair.factor, item.Leeway.From[pair.f])}"
                        + (item.Leeway.From[pair.f] == item.Leeway.To[pair.f] ? ""
                            : $" to {GeometryText.Value(pair.factor, item.Leeway.To[pair.f])}")))
                + (item.Leeway.Count > 2 ? ", not in every combination." : "."));

    private static IEnumerable<string> Samples(ProductLineResult result, LineSureness sureness)
    {
        if (sureness.Samples.Count == 0)
            yield break;
        yield return $"Other customers: the proof is{Beside(result)} (drawn with replacement, seed {result.Study.Noise.Seed}). "
            + "The best lines of "
            + "the samples: " + string.Join(" | ", sureness.Samples.Select(trial => Holes(result, trial)).Distinct()) + ".";
    }

    private static IEnumerable<string> Weights(ProductLineResult result, LineSureness sureness) => sureness.Weights.Select(trial =>
        $"Another weight: for the {ProductLineText.Value(result.Setting with { Objective = trial.Objective })} "
            + (trial.Above < 1e-9 ? "this line is the best too."
                : $"the best line is {Holes(result, trial)}; this one is {Percent(trial.Above)} above it."));

    private static string Holes(ProductLineResult result, LineTrial trial) => string.Join(", ",
        trial.Designs.OrderByDescending(design => Math.Abs(design.OffsetMetres)).Select(design =>
            ProductLineText.HoleOffset(result.Study, design)));

    private static int NotRound(IEnumerable<Model.FrameGeometry> designs) => designs.Count(design => !LineSureness.IsRound(design));

    private static double Above(ProductLineResult result, SimplerLine line) => line.Value / result.Solution.Value - 1;

    private static string Percent(double share) => Invariant($"{100 * share:0.0} %");

    /// <summary>A kind of line in words.</summary>
    public static string Kind(SimplerKind kind) => kind switch
    {
        SimplerKind.OneFrame => "one frame, only the holes differ",
        SimplerKind.OneSpacing => "one hang-point spacing",
        SimplerKind.RoundHoles => "holes at whole 5 mm",
        _ => "one frame, holes at whole 5 mm",
    };
}
