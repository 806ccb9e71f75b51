namespace FrameOpt.Model.Mission;

/// <summary>A row of the catalogue for a response over many cases, made from the row of the response of one case.</summary>
public sealed class CaseQuantity : ResponseEntry, IEquatable<CaseQuantity>
{
    /// <summary>Share of the cases in which every limit is met.</summary>
    public static readonly CaseQuantity LimitsMet = new(
        Response.LimitsMet.Words, "", "share of the cases in which the design flies and meets every limit", Response.LimitsMet.Words)
    { IsShare = true, IsHigherBetter = true };

    /// <summary>The row of a response over cases.</summary>
    public CaseQuantity(Response.OverCases response)
        : this(
            response.Name,
            response.Statistic is CaseStatistic.Share ? "" : response.Single.Unit,
            $"{response.Name}, over the cases of the noise; of one case: {response.Single.Entry.Meaning}",
            response.Statistic.Of(TitleOf(response.Single)))
    {
        var single = response.Single.Entry;
        IsShare = response.Statistic is CaseStatistic.Share;
        IsHigherBetter = IsShare || (single.IsHigherBetter && response.Statistic is not CaseStatistic.StandardDeviation);
        Sign = single.Sign == ResponseSign.Either ? ResponseSign.Either : ResponseSign.NeverNegative;
        Needs = single.Needs;
        LargestRanked = IsShare ? null : single.LargestRanked;
    }

    private CaseQuantity(string name, string unit, string meaning, string title)
        : base(name, unit, meaning, title, 0)
    {
    }

    /// <summary>True for a share of the cases, 0 to 1.</summary>
    public bool IsShare { get; private init; }

    /// <inheritdoc/>
    public bool Equals(CaseQuantity? other) => other?.Name == Name;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as CaseQuantity);

    /// <inheritdoc/>
    public override int GetHashCode() => Name.GetHashCode(StringComparison.Ordinal);

    private static string TitleOf(Response single) =>
        single.Entry.Title + (single is Response.OfPhase phase ? $" in {phase.PhaseName}" : "");
}
