using FrameOpt.Search.Stopping;

namespace FrameOpt.Studies;

/// <summary>How the designs of a study are chosen.</summary>
public abstract record SearchSetting
{
    private SearchSetting()
    {
    }

    /// <summary>Every design of the grid.</summary>
    public sealed record Exhaustive : SearchSetting;

    /// <summary>An evolutionary search, for spaces too large for a grid.</summary>
    /// <param name="Method">The search algorithm.</param>
    /// <param name="Population">Population size, at least 2.</param>
    /// <param name="Seed">The same seed gives the same run.</param>
    /// <param name="Stop">Stop rules.</param>
    public sealed record Evolutionary(SearchMethod Method, int Population, ulong Seed, StopRules Stop) : SearchSetting
    {
        /// <summary>True to end with a local search from the front, which takes a tenth of the evaluations.</summary>
        public bool LocalSearch { get; init; }

        /// <summary>Designs to start from, or null to start at random.</summary>
        public SearchStart? Start { get; init; }
    }
}

/// <summary>An evolutionary search a study may ask for.</summary>
public enum SearchMethod
{
    /// <summary>Non-dominated sorting with crowding, for two objectives, good enough for three.</summary>
    NsgaII,

    /// <summary>By reference points, for three objectives and more.</summary>
    NsgaIII,
}

/// <summary>The designs an evolutionary search starts from.</summary>
public abstract record SearchStart
{
    private SearchStart()
    {
    }

    /// <summary>Number of designs.</summary>
    public abstract int Count { get; }

    /// <summary>The source of the designs, as the study writes it.</summary>
    public abstract string Description { get; }

    /// <summary>The runs of the study's own plan.</summary>
    /// <param name="Runs">Number of runs of the plan.</param>
    public sealed record FromPlan(int Runs) : SearchStart
    {
        /// <summary>How a study asks for the runs of its plan.</summary>
        public const string Keyword = "plan";

        /// <inheritdoc/>
        public override int Count => Runs;

        /// <inheritdoc/>
        public override string Description => Keyword;
    }

    /// <summary>Designs read from a file.</summary>
    /// <param name="Name">Name of the file, as the study writes it.</param>
    /// <param name="Designs">Each a value in m or rad for every factor of the study, in its order.</param>
    public sealed record FromFile(string Name, IReadOnlyList<IReadOnlyList<double>> Designs) : SearchStart
    {
        /// <inheritdoc/>
        public override int Count => Designs.Count;

        /// <inheritdoc/>
        public override string Description => Name;
    }
}
