namespace FrameOpt.Analysis;

/// <summary>The setting that meets several goals best, by the fits, within the runs.</summary>
/// <param name="Settings">One for each factor, in its unit.</param>
/// <param name="Overall">Geometric mean of the desirabilities, 0 to 1.</param>
/// <param name="Responses">One for each goal.</param>
public sealed record RunOptimum(IReadOnlyList<double> Settings, double Overall, IReadOnlyList<GoalReached> Responses)
{
    private const double Confidence = 0.95;
    private const ulong Seed = 1;

    /// <summary>The best setting.</summary>
    /// <param name="table">The runs.</param>
    /// <param name="goals">One or more; responses of the table, each with what is wanted of it.</param>
    public static RunOptimum Of(RunTable table, IReadOnlyList<(RunAnalysis Analysis, Desirability Wanted)> goals)
    {
        var best = DesirabilitySearch.Maximise(
            [.. goals.Select(goal => new ResponseDesirability(goal.Analysis.Predict, goal.Wanted))], table.CodedRanges(), Seed);
        return new RunOptimum(table.Coding.Uncoded(best.Design), best.Overall, [.. goals.Select((goal, g) => new GoalReached(
            goal.Analysis.Response, best.Responses[g], best.Desirabilities[g],
            goal.Analysis.PredictionInterval(best.Design, Confidence)))]);
    }
}

/// <summary>One response at the best setting.</summary>
/// <param name="Response">The one.</param>
/// <param name="Value">By its fit.</param>
/// <param name="Desirability">0 to 1.</param>
/// <param name="Interval">Where one further run would lie, 19 of 20 times; null where nothing can be tested.</param>
public sealed record GoalReached(MeasuredResponse Response, double Value, double Desirability, Interval? Interval);
