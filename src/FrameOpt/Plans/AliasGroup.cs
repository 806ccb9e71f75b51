namespace FrameOpt.Plans;

/// <summary>Effects a plan cannot tell apart: what is estimated is their sum, with the signs shown.</summary>
/// <param name="Effects">The shortest first, without a minus; then the others, a minus meaning that the column is the opposite.</param>
public sealed record AliasGroup(IReadOnlyList<EffectWord> Effects)
{
    /// <summary>Such as "A = BCD".</summary>
    public override string ToString() => string.Join(" = ", Effects);
}
