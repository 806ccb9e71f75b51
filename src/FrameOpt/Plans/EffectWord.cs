using System.Numerics;

namespace FrameOpt.Plans;

/// <summary>A product of factors such as ABD or -ABD: an effect, or a word of a defining relation. Letters stand for the factors in order;
/// I is left out,
/// because it stands for no factor at all.</summary>
/// <param name="Factors">A bit for each factor: bit 0 is the first.</param>
/// <param name="Negative">Whether the product carries a minus.</param>
public readonly record struct EffectWord(uint Factors, bool Negative = false)
{
    /// <summary>The letters of the factors in order.</summary>
    public const string Letters = "ABCDEFGHJKLMNOPQRSTUVWXYZ";

    /// <summary>How many factors it has: 1 for a main effect, 2 for an interaction of two.</summary>
    public int Length => BitOperations.PopCount(Factors);

    /// <summary>The product of two words; a factor in both falls out, as its square is 1.</summary>
    public static EffectWord operator *(EffectWord left, EffectWord right) =>
        new(left.Factors ^ right.Factors, left.Negative ^ right.Negative);

    /// <summary>The value of the product at a point: its sign times the coded values of its factors.</summary>
    public double At(IReadOnlyList<double> coded)
    {
        var value = Negative ? -1.0 : 1.0;
        for (var f = 0; f < coded.Count; f++)
        {
            if ((Factors >> f & 1) == 1)
                value *= coded[f];
        }

        return value;
    }

    /// <summary>Such as "ABD", "-ABD" or "I".</summary>
    public override string ToString()
    {
        var factors = Factors;
        var letters = string.Concat(Letters.Where((_, f) => (factors >> f & 1) == 1));
        return (Negative ? "-" : "") + (letters.Length == 0 ? "I" : letters);
    }

    /// <summary>Reads letters such as "ABD" or "-ABD".</summary>
    /// <param name="text">Letters in any order and case, with an optional sign.</param>
    /// <param name="factors">How many factors there are; later letters are refused.</param>
    /// <exception cref="ArgumentException">A letter that is no factor, or one twice.</exception>
    public static EffectWord Parse(string text, int factors)
    {
        var trimmed = text.Trim();
        var negative = trimmed.StartsWith('-');
        var word = new EffectWord(0, negative);
        foreach (var letter in trimmed.TrimStart('-', '+').Trim().ToUpperInvariant())
        {
            var f = Letters.IndexOf(letter);
            if (f < 0 || f >= factors)
                throw new ArgumentException($"\"{letter}\" in \"{text}\" is none of the factors {Letters[..factors]}");
            if ((word.Factors >> f & 1) == 1)
                throw new ArgumentException($"\"{letter}\" stands twice in \"{text}\"");
            word *= new EffectWord(1u << f);
        }

        return word;
    }
}
