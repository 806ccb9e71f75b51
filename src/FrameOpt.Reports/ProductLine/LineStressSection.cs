using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;
using static System.FormattableString;

namespace FrameOpt.Reports.ProductLine;

/// <summary>What the line as built does when one number of the study is otherwise.</summary>
internal static class LineStressSection
{
    /// <summary>So many are shown beside those of the wing, the hardest first; line.json has all of them.</summary>
    private const int MostShown = 8;

    public static IEnumerable<AnswerSection> Of(ProductLineResult result)
    {
        if (result.Stress.Count < 2)
            yield break;
        var response = result.Setting.CostResponse;
        var name = StudyText.Title(response.Response, response.Magnitude);
        string Amount(double value) => double.IsNaN(value) ? "-" : NumberFormat.Text(value, response.Response.Entry);
        var ofWing = result.Stress.Where(stress => stress.Source?.Unit == NoiseUnit.Range).ToList();
        var hardest = result.Stress.Skip(1).Except(ofWing).OrderByDescending(stress => stress.OutsideLimits)
            .ThenByDescending(stress => stress.WorstEffort).Take(MostShown).ToList();
        yield return new AnswerSection(
            "The same geometries when one number is otherwise: each customer keeps the one assigned",
            [
                "Low and high yaw leverage, soft and stiff riser coupling; each further number of the noise (docs/noise.md) alone at an "
                    + "end of what 8 of 10 cases lie between; every pilot 5 kg lighter and heavier. Of the last two kinds the hardest "
                    + $"{hardest.Count} of {result.Stress.Count - 1 - ofWing.Count}. Mean and worst are of the customers within the "
                    + "limits; shares are of the pieces.",
                .. Headline(result),
            ],
            new AnswerTable(
                ["what is otherwise", "largest effort", $"mean {name}", $"worst {name}", "outside the limits",
                    "another would serve better"],
                [.. ofWing.Prepend(result.Stress[0]).Concat(hardest).Select(stress => (IReadOnlyList<string>)
                [
                    What(stress), Effort(stress.WorstEffort), Amount(stress.MeanCost),
                    Amount(stress.WorstCost), Percent(stress.OutsideLimits), Percent(stress.BetterWithAnother),
                ])]));
    }

    /// <summary>What is otherwise, in words.</summary>
    public static string What(LineStress stress) => stress.Source is { } source
        ? source.Unit == NoiseUnit.Range ? $"{source.Title}: {(stress.Deviation < 0 ? source.Less : source.More).Replace("towards ", "")}"
            : $"{source.Title}: {NoiseText.Deviation(source, stress.Deviation)}"
        : stress.Deviation == 0 ? "nothing: as in the study"
        : Invariant($"every pilot {Math.Abs(stress.Deviation):0} kg {(stress.Deviation > 0 ? "heavier" : "lighter")}");

    private static IEnumerable<string> Headline(ProductLineResult result)
    {
        var beyond = result.Stress.Where(stress => stress.WorstEffort > 1).ToList();
        if (beyond.Count > 0)
            yield return $"SOME PILOT CANNOT HOLD IT in {NumberFormat.Count(beyond.Count)} of these {result.Stress.Count}.";
        var outside = result.Stress.Count(stress => stress.OutsideLimits > 0);
        yield return outside == 0 ? "Every customer stays within the limits in each of them."
            : $"In {NumberFormat.Count(outside)} of them some customers are outside the limits.";
    }

    private static string Effort(double effort) => double.IsNaN(effort) ? "-" : double.IsInfinity(effort) ? "no lean cures it"
        : Invariant($"{effort:0.00}");

    private static string Percent(double share) => share > 0 && share < 0.005 ? "below 1 %" : Invariant($"{100 * share:0} %");
}
