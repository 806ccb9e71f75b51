using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;
using static System.FormattableString;

namespace FrameOpt.Reports.Answer;

/// <summary>Whether another design would be the best one, which ones nobody could tell apart, and what a robust choice costs.</summary>
internal static class ChoiceSection
{
    private const int MostOthers = 3;

    /// <summary>Designs that are the best more rarely round to 0 of 100.</summary>
    private const double LeastNamed = 0.005;
    private const int MostSources = 6;

    /// <summary>The sections; none when nothing is uncertain or there is nothing to choose.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="uncertainty">Of the chosen design, or null.</param>
    public static IEnumerable<AnswerSection> Of(Study study, UncertaintyResult? uncertainty)
    {
        if (uncertainty is null)
            yield break;
        if (uncertainty.Choice is { } choice)
            yield return new AnswerSection(
                "Is it the best design?", [.. Sentences(study, choice, uncertainty.Bars.FirstOrDefault()?.Source)], Price(study, choice));
        if (uncertainty.Shares.Count > 0)
            yield return Shares(study, uncertainty);
    }

    private static IEnumerable<string> Sentences(Study study, ChoiceResult choice, NoiseSource? source)
    {
        var chosen = choice.Standings[0];
        yield return choice.Standings.Count == 1 ? "It is the only design on the front."
            : $"Of {NumberFormat.Count(choice.Standings.Count, "design")} of the front, ranked in each of "
                + $"{NumberFormat.Count(choice.Cases)} cases, it is the best in {NoiseText.InCases(chosen.Best)}"
                + $"{Others(study, chosen.Design, choice)}. {None(choice)}".TrimEnd();
        if (choice.Weights.Count > 0)
            yield return Weights(study, chosen.Design, choice);
        yield return $"By {StudyText.Method(study.Ranking.OtherMethod)}, the other ranking method, the best is "
            + $"{Named(study, chosen.Design, choice.OtherMethod)}.";
        foreach (var spread in choice.OfSpread)
            yield return $"By weights from the spread of the front itself, {spread.Method}, which the study does not use ("
                + $"{string.Join(", ", study.Objectives.Zip(spread.Weights, (objective, weight) =>
                    Invariant($"{StudyText.Title(objective.Response, objective.Magnitude)} {weight:0.00}")))}), the best is "
                + $"{Named(study, chosen.Design, spread.Best)}.";
        if (choice.Seeds.Count > 0)
            yield return Seeds(study, chosen.Design, choice);
        if (choice.Better.Count > 0)
            yield return "NOT THE BEST OVER THE CASES: "
                + $"{NumberFormat.Count(choice.Better.Count, "other design")} of the front ranked before it in 80 of 100 "
                + "cases or more, of those in which one of the two meets every limit.";
        yield return Group(study, chosen.Design, choice, source);
        if (choice.AsDrawn.Design != choice.Robust.Design
            && study.Objectives.Select(objective => objective.OfOneCase).OfType<StudyObjective>().FirstOrDefault() is { } first)
        {
            yield return Regret(study, choice, first);
        }
    }

    private static string None(ChoiceResult choice) => choice.NoneMeetsLimits > 0
        ? $"In {NoiseText.InCases(choice.NoneMeetsLimits)} none of them meets every limit." : "";

    private static string Others(Study study, FrontDesign chosen, ChoiceResult choice)
    {
        var others = choice.Standings.Skip(1).Where(one => one.Best >= LeastNamed).OrderByDescending(one => one.Best).Take(MostOthers)
            .Select(one => $"{Named(study, chosen, one.Design)} in {NoiseText.InCases(one.Best)}").ToList();
        return others.Count == 0 ? "" : "; next " + string.Join("; ", others);
    }

    private static string Weights(Study study, FrontDesign chosen, ChoiceResult choice)
    {
        var own = choice.Weights.FirstOrDefault(share => share.Design == chosen)?.Share ?? 0;
        var next = choice.Weights.FirstOrDefault(share => share.Design != chosen);
        return $"With each weight of the ranking up to 30 % more or less, it stays the best in {Percent(own)} of 100 draws"
            + (next is null ? "." : $"; next {Named(study, chosen, next.Design)} in {Percent(next.Share)}.");
    }

    private static string Seeds(Study study, FrontDesign chosen, ChoiceResult choice)
    {
        var same = choice.Seeds.Count(seed => seed.Best?.Geometry == chosen.Geometry);
        var others = choice.Seeds.Where(seed => seed.Best is { } best && best.Geometry != chosen.Geometry)
            .Select(seed => Invariant($"seed {seed.Seed} ") + Named(study, chosen, seed.Best!)).ToList();
        return $"The same search from {choice.Seeds.Count} other seeds finds this design {same} of {choice.Seeds.Count} times"
            + (others.Count == 0 ? "." : $": {string.Join("; ", others)}.");
    }

    private static string Group(Study study, FrontDesign chosen, ChoiceResult choice, NoiseSource? source)
    {
        var others = choice.Group.Count - 1;
        if (others == 0)
            return "No other design of the front ranks before it in 20 of 100 cases or more.";
        var round = RoundFigure.Count(study, choice.Easiest.Geometry);
        var easiest = choice.Easiest == chosen ? "This one is the easiest of them to build"
            : $"THE EASIEST OF THEM TO BUILD: {Named(study, chosen, choice.Easiest)}";
        return $"{NumberFormat.Count(others, "other design")} of the front cannot be told apart from it: each ranks before it in 20 of 100 "
            + $"cases or more. {easiest}: {round} of {study.Factors.Count} dimensions on whole 5 mm or whole degrees."
            + (source is null || 2 * others < choice.Standings.Count ? "" : " MEASURE BEFORE CHOOSING: that is most of the front, so the "
                + $"choice among them matters little while this is uncertain: {source.Title}.");
    }

    /// <summary>What each of the two choices gives up where the other one is right.</summary>
    private static string Regret(Study study, ChoiceResult choice, StudyObjective first)
    {
        string GivenUp(double more) => Math.Max(0, first.Maximise ? -more : more) is > 0 and var size
            ? NumberFormat.Text(size, first.Response.Entry) : "nothing";
        var (drawn, robust) = (choice.AsDrawn, choice.Robust);
        return "Of the two choices below, the one over the cases gives up "
            + $"{GivenUp(robust.Values[0].AsDrawn - drawn.Values[0].AsDrawn)} of {StudyText.Title(first.Response, first.Magnitude)} "
            + $"if every number is exact; the other gives up {GivenUp(drawn.Values[0].NineOfTen - robust.Values[0].NineOfTen)} of it in 9 "
            + "of 10 cases" + (study.Limits.Count == 0 ? "."
                : $", and meets every limit in {NoiseText.InCases(drawn.LimitsMet)} instead of {NoiseText.InCases(robust.LimitsMet)}.");
    }

    /// <summary>What a design has that the chosen one has not.</summary>
    private static string Named(Study study, FrontDesign chosen, FrontDesign design)
    {
        var difference = GeometryText.Difference(study, design.Geometry, chosen.Geometry);
        return difference.Length == 0 ? "the same design" : $"the one with {difference}";
    }

    private static AnswerTable? Price(Study study, ChoiceResult choice)
    {
        if (choice.AsDrawn.Design == choice.Robust.Design)
            return null;
        Standing[] both = [choice.AsDrawn, choice.Robust];
        var objectives = study.Objectives.Select(objective => objective.OfOneCase).OfType<StudyObjective>().ToList();
        string[] Row(string name, Func<Standing, string> cell) => [name, .. both.Select(cell)];
        return new AnswerTable(["the price of robustness", "best with every number exact", "best over the cases"],
        [
            .. study.Factors.Where(factor => factor.IsSwept).Select(factor => Row(
                StudyText.Capitalised(factor.Input.ShortName), one => GeometryText.Value(factor, one.Design.Geometry[factor.Input]))),
            .. objectives.SelectMany((objective, o) => (string[][])
            [
                Row($"{StudyText.Title(objective.Response, objective.Magnitude)}, every number exact",
                    one => NumberFormat.Text(one.Values[o].AsDrawn, objective.Response.Entry)),
                Row($"the same in 9 of 10 cases, {(objective.Maximise ? "at least" : "at most")}",
                    one => NumberFormat.Text(one.Values[o].NineOfTen, objective.Response.Entry)),
            ]),
            Row("every limit met", one => NoiseText.InCases(one.LimitsMet)),
            Row("the best of those compared", one => NoiseText.InCases(one.Best)),
        ]);
    }

    private static AnswerSection Shares(Study study, UncertaintyResult uncertainty)
    {
        var shares = uncertainty.Shares;
        var first = uncertainty.Bars.Select(bar => bar.Source)
            .OrderByDescending(source => shares.Max(share => share.Shares.FirstOrDefault(one => one.Source == source)?.Shapley ?? 0))
            .Take(MostSources).ToList();
        return new AnswerSection("What the spread comes from",
            ["All numbers uncertain at once: the share of each in the variance of the residual torque (Shapley effect), and in "
                + "brackets the share that would remain if every other number were known (total Sobol index). No straight line is assumed; "
                + "good to about 6 in 100 of each."],
            new AnswerTable(
                ["uncertain number", .. shares.Select(share =>
                    Invariant($"{study.Mission[share.Phase].Name}, spread ±{share.StandardDeviation:0.0} N·m"))],
                [.. first.Select(source => (IReadOnlyList<string>)
                [
                    source.Title,
                    .. shares.Select(share => share.Shares.FirstOrDefault(one => one.Source == source) is { } one
                        ? $"{Percent(one.Shapley)} % ({Percent(one.Total)} %)" : ""),
                ])]));
    }

    private static string Percent(double share) => Invariant($"{Math.Round(100 * share) + 0.0:0}");
}
