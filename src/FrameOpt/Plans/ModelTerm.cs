namespace FrameOpt.Plans;

/// <summary>One term of a model in coded units: a product of factors.</summary>
/// <param name="Factors">The places of the factors from 0: none for the constant, two unlike for an interaction, one twice for a square.</param>
public sealed record ModelTerm(IReadOnlyList<int> Factors)
{
    /// <summary>The value of the product at a point.</summary>
    public double At(IReadOnlyList<double> coded)
    {
        var value = 1.0;
        for (var f = 0; f < Factors.Count; f++)
            value *= coded[Factors[f]];
        return value;
    }

    /// <summary>Such as "spacing", "spacing*offset", "spacing^2" or "constant".</summary>
    /// <param name="names">The names of the factors.</param>
    public string Name(IReadOnlyList<string> names) => Factors.Count == 0
        ? "constant"
        : string.Join('*', Factors.CountBy(f => f).Select(power => power.Value == 1 ? names[power.Key] : $"{names[power.Key]}^{power.Value}"));
}
