using FrameOpt.Search.Stopping;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads how the designs are chosen.</summary>
internal static class SearchReader
{
    private const string Exhaustive = "exhaustive";
    private const int MaxPopulation = 100_000;
    private const int MaxEvaluations = 2_000_000;
    private const double AssumedGrowth = 0.001;

    private static readonly Dictionary<string, SearchMethod> methods = new()
    {
        ["NSGA-II"] = SearchMethod.NsgaII,
        ["NSGA-III"] = SearchMethod.NsgaIII,
    };

    /// <summary>The search, or null after an error in its method.</summary>
    public static SearchSetting? Read(Section study, IReadOnlyList<StudyFactor> factors, IReadOnlyList<StudyObjective> objectives,
        ResponseReader responses)
    {
        if (!study.Has("search"))
        {
            study.DiagnosticBag.AddAssumption(
                "search", Exhaustive, "assumption: every design of the grid is computed, so the front is exact");
            return new SearchSetting.Exhaustive();
        }

        var search = study.Child("search", StudyKeys.Search);
        if (search?.Choice("method", [Exhaustive, .. methods.Keys]) is not { } method)
            return null;
        if (method != Exhaustive)
            return Evolutionary(study, search, methods[method], factors, objectives, responses);
        foreach (var key in new[] { "population", "seed", "start", "polish", "stop" }.Where(search.Has))
            search.DiagnosticBag.Add(search.KeyAt(key), $"An exhaustive search takes no {key}: it computes every design.",
                $"Remove it; it belongs to {string.Join(", ", methods.Keys)}.");
        return new SearchSetting.Exhaustive();
    }

    private static SearchSetting.Evolutionary Evolutionary(
        Section study, Section search, SearchMethod method, IReadOnlyList<StudyFactor> factors, IReadOnlyList<StudyObjective> objectives,
            ResponseReader responses)
    {
        AddAssumption(search, "population", "100", "assumption");
        AddAssumption(search, "seed", "1", "assumption: any other does as well");
        var start = StartReader.Read(search, factors);
        if (start is SearchStart.FromPlan && !study.Has("plan"))
            search.DiagnosticBag.Add(search.At("start"), "The study has no plan to begin from.",
                "Add a `plan`, for example `plan: { kind: central composite }`, or leave `start` out.");
        var stop = Stop(search, objectives, responses);
        if (start?.Count > stop.Evaluations / 2)
            search.DiagnosticBag.AddWarning(
                search.At("start"),
                $"Beginning from {start.Count} designs leaves little of {stop.Evaluations} evaluations to search with: "
                + "raise search.stop.evaluations, or begin from fewer.");
        return new SearchSetting.Evolutionary(method, search.Integer("population", 100, 2, MaxPopulation),
            (ulong)search.Integer("seed", 1, 0, int.MaxValue), stop)
        {
            LocalSearch = search.Has("polish") && search.Boolean("polish"),
            Start = start,
        };
    }

    private static StopRules Stop(Section search, IReadOnlyList<StudyObjective> objectives, ResponseReader responses)
    {
        var stop = search.Child("stop", StudyKeys.Stop);
        if (stop is null || !stop.Has("evaluations"))
            search.DiagnosticBag.AddAssumption("evaluations of the search", "20000", "assumption: two hundred generations of a hundred");
        if (stop is null)
            return new StopRules(20_000);
        return new StopRules(stop.Integer("evaluations", 20_000, 1, MaxEvaluations))
        {
            Time = stop.OptionalNumber("time", Dimension.Time, AllowedRange.PositiveUpTo(7 * 86_400, "168 h")) is { } seconds
                && !double.IsNaN(seconds) ? TimeSpan.FromSeconds(seconds) : null,
            Stall = Stall(stop.Child("stall", StudyKeys.Stall)),
            Target = Target(stop, objectives, responses),
        };
    }

    private static StallRule? Stall(Section? stall)
    {
        if (stall is null)
            return null;
        if (!stall.Has("growth"))
            stall.DiagnosticBag.AddAssumption("growth below which the search has stalled", "0.1 %", "assumption");
        var growth = stall.OptionalNumber("growth", Dimension.Share, AllowedRange.PositiveUpTo(1, "100 %")) ?? AssumedGrowth;
        return new StallRule(stall.Integer("evaluations", 5000, 1, MaxEvaluations), growth);
    }

    private static IReadOnlyList<double?> Target(Section stop, IReadOnlyList<StudyObjective> objectives, ResponseReader responses)
    {
        var entries = stop.Entries("target");
        if (entries.Count == 0)
            return [];
        var target = new double?[objectives.Count];
        var taken = new HashSet<int>();
        foreach (var entry in entries)
        {
            if (responses.ReadAny(entry.Key.Text, entry.Key) is not { } response)
                continue;
            var index = objectives.ToList().FindIndex(objective => objective.Response == response);
            if (index < 0)
                stop.DiagnosticBag.Add(entry.Key, $"{response.Name} is not an objective, so it can be no target.",
                    "Remove it, or make it an objective.");
            else if (!taken.Add(index))
                stop.DiagnosticBag.Add(entry.Key, $"{response.Name} has a target twice.", "Remove one of the two.");
            else if (ResponseAmount.Of(entry.Value, $"search.stop.target.{response.Name}", response, AllowedRange.None,
                stop.DiagnosticBag) is { } amount)
                target[index] = objectives[index].Oriented(amount);
        }

        return target;
    }

    private static void AddAssumption(Section search, string key, string value, string source)
    {
        if (!search.Has(key))
            search.DiagnosticBag.AddAssumption($"{key} of the search", value, source);
    }
}
