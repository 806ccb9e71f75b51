namespace FrameOpt.Studies;

/// <summary>Whether the chosen design is the best one when the numbers are not exact, and which others are as good.</summary>
/// <param name="Cases">Cases in which the designs were ranked against each other.</param>
/// <param name="NoneMeetsLimits">Share of the cases in which no compared design meets every limit.</param>
/// <param name="Standings">The compared designs in the run's order, the chosen one first.</param>
/// <param name="Weights">Who is best with other weights.</param>
/// <param name="OtherMethod">Best by the other ranking method.</param>
/// <param name="Seeds">Best of the same search from other seeds; empty for an exhaustive search.</param>
public sealed record ChoiceResult(
    int Cases, double NoneMeetsLimits, IReadOnlyList<Standing> Standings, IReadOnlyList<DesignShare> Weights, FrontDesign OtherMethod,
    IReadOnlyList<SeedBest> Seeds)
{
    /// <summary>A design that ranks before another in this share of the cases or more is told apart from it.</summary>
    public const double ToldApart = 0.8;

    /// <summary>The designs that nobody could tell apart from the chosen one, which is the first of them.</summary>
    public IReadOnlyList<Standing> Group =>
        [.. Standings.Where((one, i) => i == 0 || one.BeforeChosen is >= 1 - ToldApart and < ToldApart)];

    /// <summary>The designs that are better than the chosen one, told apart from it by the cases.</summary>
    public IReadOnlyList<Standing> Better => [.. Standings.Where(one => one.BeforeChosen >= ToldApart)];

    /// <summary>Of those, the easiest to build: the most dimensions on round figures, then nearest to the baseline.</summary>
    public required FrontDesign Easiest { get; init; }

    /// <summary>Weights from the spread of the front itself, each with the design that would be best by them: to hold the study's own
    /// against.</summary>
    public IReadOnlyList<SpreadWeights> OfSpread { get; init; } = [];

    /// <summary>Best by the values as drawn.</summary>
    public required Standing AsDrawn { get; init; }

    /// <summary>Best by the values that nine of ten cases do not exceed, among those that meet the limits most often.</summary>
    public required Standing Robust { get; init; }
}

/// <summary>How a design does over the cases.</summary>
/// <param name="Design">Of the front.</param>
/// <param name="Best">Share of the cases in which it is the best of those compared.</param>
/// <param name="BeforeChosen">Share in which it ranks before the chosen design, of the cases in which one of the two meets every limit; a
/// tie counts half.</param>
/// <param name="LimitsMet">Share of the cases in which it flies and meets every limit.</param>
/// <param name="Values">For each objective the value as drawn and the one that nine of ten cases do not exceed to the worse side, in its
/// unit.</param>
public sealed record Standing(
    FrontDesign Design, double Best, double BeforeChosen, double LimitsMet, IReadOnlyList<(double AsDrawn, double NineOfTen)> Values);

/// <summary>A design and how often it is the best.</summary>
/// <param name="Design">Of the front.</param>
/// <param name="Share">0 to 1.</param>
public sealed record DesignShare(FrontDesign Design, double Share);

/// <summary>What the same search finds from another seed.</summary>
/// <param name="Seed">Of the search.</param>
/// <param name="Best">Its best design, or null when it found none.</param>
public sealed record SeedBest(ulong Seed, FrontDesign? Best);

/// <summary>Weights of the objectives that follow from the spread of a front.</summary>
/// <param name="Method">How, in words.</param>
/// <param name="Weights">One for each objective, adding up to 1.</param>
/// <param name="Best">The design that they would choose.</param>
public sealed record SpreadWeights(string Method, IReadOnlyList<double> Weights, FrontDesign Best);
