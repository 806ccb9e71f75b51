using FrameOpt.Numerics;

namespace FrameOpt.Analysis;

/// <summary>The setting that meets several goals best, by the fits, within the runs.</summary>
/// <param name="Settings">One for each factor, in its unit.</param>
/// <param name="Overall">Geometric mean of the desirabilities, 0 to 1.</param>
/// <param name="Responses">One for each goal.</param>
public sealed record RunOptimum(IReadOnlyList<double> Settings, double Overall, IReadOnlyList<GoalReached> Responses)
{
    private const double Confidence = 0.95;
    private const ulong Seed = 1;
    private const int Tried = 4096;

    /// <summary>More factors than this are rounded to the nearest, one by one.</summary>
    private const int MostRoundedTogether = 12;

    /// <summary>The best of the settings beside it that can be built; null where that is not known.</summary>
    public RunOptimum? Built { get; init; }

    /// <summary>The best setting.</summary>
    /// <param name="table">The runs.</param>
    /// <param name="goals">One or more; responses of the table, each with what is wanted of it.</param>
    /// <param name="canBuild">What can be built; null where that is not known.</param>
    public static RunOptimum Of(
        RunTable table, IReadOnlyList<(RunAnalysis Analysis, Desirability Wanted)> goals, BuildableSettings? canBuild = null)
    {
        var box = table.CodedRanges();
        List<ResponseDesirability> wanted = [.. goals.Select(goal => new ResponseDesirability(goal.Analysis.Predict, goal.Wanted))];
        var best = DesirabilitySearch.Maximise(wanted, box, Seed);
        List<double[]> places = [.. SobolSequence.Points(box.Count, Tried).Select(point =>
            point.Select((share, f) => box[f].Low + (share * (box[f].High - box[f].Low))).ToArray())];
        var ranges = goals.Select(goal => places.Select(place => goal.Analysis.Predict(place)).ToList())
            .Select(values => new Interval(values.Min(), values.Max())).ToList();
        RunOptimum At(IReadOnlyList<double> coded)
        {
            double[] values = [.. goals.Select(goal => goal.Analysis.Predict(coded))];
            double[] desirabilities = [.. goals.Zip(values, (goal, value) => goal.Wanted.Of(value))];
            return new RunOptimum(table.Coding.Uncoded(coded), Desirability.Overall(desirabilities), [.. goals.Select((goal, g) =>
                new GoalReached(goal.Analysis.Response, values[g], desirabilities[g],
                    goal.Analysis.PredictionInterval(coded, Confidence), ranges[g], CanBeMet(wanted[g], box)))]);
        }

        var exact = At(best.Design);
        return canBuild is null || exact.Overall == 0 ? exact : exact with
        {
            Built = canBuild.Beside(exact.Settings, MostRoundedTogether).Select(settings => At(table.Coding.Coded(settings)))
                .MaxBy(one => one.Overall),
        };
    }

    /// <summary>Whether one goal alone is met somewhere within the runs.</summary>
    private static bool CanBeMet(ResponseDesirability goal, IReadOnlyList<Interval> box) =>
        DesirabilitySearch.Maximise([goal], box, Seed).Overall > 0;
}

/// <summary>One response at the best setting.</summary>
/// <param name="Response">The one.</param>
/// <param name="Value">By its fit.</param>
/// <param name="Desirability">0 to 1.</param>
/// <param name="Interval">Where one further run would lie, 19 of 20 times; null where nothing can be tested.</param>
/// <param name="Range">Of the fit within the runs, over a few thousand places.</param>
/// <param name="CanBeMet">Whether this goal alone is met somewhere within the runs.</param>
public sealed record GoalReached(
    MeasuredResponse Response, double Value, double Desirability, Interval? Interval, Interval Range, bool CanBeMet);

/// <summary>The settings of factors that can be built.</summary>
/// <param name="Levels">For each factor the values it can have, rising, in its unit; null for any value.</param>
/// <param name="IsThere">Whether a combination of them exists, as of two holes; null for every one.</param>
public sealed record BuildableSettings(
    IReadOnlyList<IReadOnlyList<double>?> Levels, Func<IReadOnlyList<double>, bool>? IsThere = null)
{
    /// <summary>Of more factors only the two nearest levels are tried.</summary>
    private const int MostWidened = 5;

    /// <summary>The settings beside a place: of each factor the levels next to it, in every combination that exists; more of them for
    /// factors that go together, until one does.</summary>
    internal IEnumerable<IReadOnlyList<double>> Beside(IReadOnlyList<double> place, int mostTogether)
    {
        foreach (var count in place.Count > mostTogether ? (int[])[1] : place.Count > MostWidened || IsThere is null ? [2] : [2, 4, 8])
        {
            var found = Combinations(place, count).Where(settings => IsThere is null || IsThere(settings)).ToList();
            if (found.Count > 0)
                return found;
        }

        return [];
    }

    private IEnumerable<double[]> Combinations(IReadOnlyList<double> place, int count)
    {
        IEnumerable<double[]> all = [[]];
        for (var f = 0; f < place.Count; f++)
        {
            var own = place[f];
            double[] beside = Levels[f] is not { } levels ? [own] : [.. levels.OrderBy(level => Math.Abs(level - own)).Take(count)];
            all = [.. all.SelectMany(_ => beside, (before, level) => (double[])[.. before, level])];
        }

        return all;
    }
}
