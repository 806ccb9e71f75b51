using FrameOpt.Search.Stopping;

namespace FrameOpt.Studies;

/// <summary>How a study wants its designs chosen.</summary>
public abstract record SearchSetting
{
    private SearchSetting()
    {
    }

    /// <summary>Every design of the grid.</summary>
    public sealed record Exhaustive : SearchSetting;

    /// <summary>An evolutionary search, for spaces too large for a grid.</summary>
    /// <param name="Method">Which.</param>
    /// <param name="Population">2 or more.</param>
    /// <param name="Seed">The same seed gives the same run.</param>
    /// <param name="Stop">When to end.</param>
    public sealed record Evolutionary(SearchMethod Method, int Population, ulong Seed, StopRules Stop) : SearchSetting
    {
        /// <summary>True to end with a local search around the front, a tenth of the evaluations being kept for it.</summary>
        public bool LocalSearch { get; init; }

        /// <summary>Designs to begin from, each a value in m or rad for every factor of the study in its order; empty to begin at
        /// random.</summary>
        public IReadOnlyList<IReadOnlyList<double>> Start { get; init; } = [];

        /// <summary>Where the designs to begin from come from; null when there are none.</summary>
        public SearchStart? StartsFrom { get; init; }
    }
}

/// <summary>Where the designs that a search begins from come from.</summary>
public abstract record SearchStart
{
    private SearchStart()
    {
    }

    /// <summary>The runs of the study's own plan.</summary>
    public sealed record Plan : SearchStart;

    /// <summary>A table of designs.</summary>
    /// <param name="Name">Of the file, as the study writes it.</param>
    public sealed record Table(string Name) : SearchStart;
}

/// <summary>An evolutionary search a study may ask for.</summary>
public enum SearchMethod
{
    /// <summary>Non-dominated sorting with crowding, for two objectives, good enough for three.</summary>
    NsgaII,

    /// <summary>By reference directions, for three objectives and more.</summary>
    NsgaIII,
}
