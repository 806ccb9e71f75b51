namespace FrameOpt.Plans;

/// <summary>How an added factor of a fraction is set: always as the product of others, such as D = ABC or D = -ABC.</summary>
/// <param name="Factor">The added factor, as its place from 0.</param>
/// <param name="Product">The product it follows, with its sign.</param>
public sealed record Generator(int Factor, EffectWord Product)
{
    /// <summary>Its word in the defining relation: D = ABC gives ABCD.</summary>
    public EffectWord Word => Product * new EffectWord(1u << Factor);

    /// <summary>Such as "D=ABC".</summary>
    public override string ToString() => $"{EffectWord.Letters[Factor]}={Product}";

    /// <summary>Reads "D=ABC".</summary>
    /// <param name="text">One letter, an equals sign, and a product of two or more other letters with an optional minus.</param>
    /// <param name="factors">How many factors there are.</param>
    /// <exception cref="ArgumentException">Not of that form.</exception>
    public static Generator Parse(string text, int factors)
    {
        var sides = text.Split('=');
        if (sides.Length != 2)
            throw new ArgumentException($"\"{text}\" is no generator; write one factor, =, and a product of others, such as D=ABC");
        var (left, product) = (EffectWord.Parse(sides[0], factors), EffectWord.Parse(sides[1], factors));
        if (left.Length != 1 || left.Negative)
            throw new ArgumentException($"the left side of \"{text}\" must be one factor without a sign");
        if (product.Length < 2 || (product.Factors & left.Factors) != 0)
            throw new ArgumentException($"the right side of \"{text}\" must be a product of two or more factors other than {left}");
        return new Generator(System.Numerics.BitOperations.TrailingZeroCount(left.Factors), product);
    }
}
