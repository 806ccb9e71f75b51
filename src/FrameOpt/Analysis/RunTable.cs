namespace FrameOpt.Analysis;

/// <summary>Measured runs: how the factors were set, and what was read.</summary>
/// <param name="Runs">Name of each run.</param>
/// <param name="Blocks">Of each run; alike where the file has no blocks.</param>
/// <param name="Factors">How they were set, in numbers, each with two values or more; none where all are words.</param>
/// <param name="Coding">What -1 and +1 stand for.</param>
/// <param name="Responses">One or more.</param>
/// <param name="NotUsed">Headers of columns that were passed over.</param>
public sealed record RunTable(
    IReadOnlyList<string> Runs, IReadOnlyList<string> Blocks, IReadOnlyList<RunColumn> Factors, FactorCoding Coding,
    IReadOnlyList<MeasuredResponse> Responses, IReadOnlyList<string> NotUsed)
{
    private const int Decimals = 12;

    /// <summary>The whole plot of each run, unlike in every block; none where each run was set up by itself.</summary>
    public IReadOnlyList<string> WholePlots { get; init; } = [];

    /// <summary>Factors whose levels are words; may be empty.</summary>
    public IReadOnlyList<WordColumn> Words { get; init; } = [];

    /// <summary>The factors of a run, coded; without the rounding of decimal units, so that a level is -1 or +1 exactly.</summary>
    public double[] Coded(int run) =>
        Array.ConvertAll(Coding.Coded([.. Factors.Select(factor => factor.Values[run])]), value => Math.Round(value, Decimals));

    /// <summary>The range of each factor over the runs, coded: where a fit may be asked.</summary>
    public IReadOnlyList<Interval> CodedRanges()
    {
        var coded = Enumerable.Range(0, Runs.Count).Select(Coded).ToList();
        return [.. Factors.Select((_, f) => new Interval(coded.Min(run => run[f]), coded.Max(run => run[f])))];
    }
}

/// <summary>A column of numbers.</summary>
/// <param name="Name">Without its unit.</param>
/// <param name="Unit">As the file writes it; may be empty.</param>
/// <param name="Values">One for each run; not a number where the cell is empty.</param>
public sealed record RunColumn(string Name, string Unit, IReadOnlyList<double> Values)
{
    /// <summary>Name and unit.</summary>
    public string Header => Unit.Length == 0 ? Name : $"{Name} [{Unit}]";
}

/// <summary>A column of words.</summary>
/// <param name="Name">Its header.</param>
/// <param name="Values">One for each run.</param>
public sealed record WordColumn(string Name, IReadOnlyList<string> Values);

/// <summary>What was read of one response.</summary>
/// <param name="Measured">Not a number where nothing was read.</param>
/// <param name="Predicted">What the model of a study says, where the file has it.</param>
public sealed record MeasuredResponse(RunColumn Measured, RunColumn? Predicted);
