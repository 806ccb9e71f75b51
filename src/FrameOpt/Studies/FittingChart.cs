namespace FrameOpt.Studies;

/// <summary>Which geometry suits which pilot mass and outfit, for every whole kilogram.</summary>
/// <param name="ColumnOption">The option the columns are for; empty when there is none.</param>
/// <param name="LightestKilograms">First mass of the chart, a multiple of <paramref name="BandKilograms"/>.</param>
/// <param name="HeaviestKilograms">The last whole kilogram of the last band.</param>
/// <param name="BandKilograms">Height of a row of the chart.</param>
/// <param name="Blocks">One for each combination of the further options that makes a difference.</param>
public sealed record FittingChart(string ColumnOption, int LightestKilograms, int HeaviestKilograms, int BandKilograms,
    IReadOnlyList<FittingBlock> Blocks)
{
    /// <summary>First and last mass of each row, from the lightest on.</summary>
    public IEnumerable<(int From, int To)> Bands => Enumerable.Range(0, (HeaviestKilograms - LightestKilograms + 1) / BandKilograms)
        .Select(band => (LightestKilograms + band * BandKilograms, LightestKilograms + (band + 1) * BandKilograms - 1));
}

/// <summary>Columns of the fitting chart with the same further choices.</summary>
/// <param name="Title">Those choices; empty when the geometry depends on none.</param>
/// <param name="Columns">One for each choice of the first option.</param>
public sealed record FittingBlock(string Title, IReadOnlyList<FittingColumn> Columns);

/// <summary>A column of the fitting chart.</summary>
/// <param name="Name">The choice it is for.</param>
/// <param name="Spans">From the lightest pilot to the heaviest, without gaps.</param>
public sealed record FittingColumn(string Name, IReadOnlyList<FittingSpan> Spans);

/// <summary>Pilot masses, in whole kilograms, that one geometry suits best.</summary>
/// <param name="FromKilograms">The first.</param>
/// <param name="ToKilograms">The last.</param>
/// <param name="Geometry">Index of the geometry; -1 when none is allowed.</param>
public sealed record FittingSpan(int FromKilograms, int ToKilograms, int Geometry)
{
    /// <summary>The part of a column between two masses.</summary>
    public static IReadOnlyList<FittingSpan> Between(IReadOnlyList<FittingSpan> spans, int from, int to) =>
    [
        .. spans.Where(span => span.FromKilograms <= to && span.ToKilograms >= from)
            .Select(span => span with { FromKilograms = Math.Max(from, span.FromKilograms), ToKilograms = Math.Min(to, span.ToKilograms) }),
    ];
}
