using System.Globalization;
using System.Text.RegularExpressions;

namespace FrameOpt.Plans;

/// <summary>One term of a polynomial model: a product of powers of the factors, as in x1, x1x2, x1^2, or 1 for the constant.</summary>
public sealed partial class ModelTerm : IEquatable<ModelTerm>
{
    private readonly int[] powers;

    /// <summary>A term from its powers.</summary>
    /// <param name="powers">One for each factor, at least 0.</param>
    public ModelTerm(params int[] powers)
    {
        this.powers = [.. powers];
        Multiplied = [.. powers.SelectMany((power, f) => Enumerable.Repeat(f, power))];
    }

    /// <summary>The factors whose product it is, each as often as its power.</summary>
    internal int[] Multiplied { get; }

    /// <summary>The power of each factor.</summary>
    public IReadOnlyList<int> Powers => powers;

    /// <summary>Sum of the powers: 0 for the constant.</summary>
    public int Order => powers.Sum();

    /// <summary>The name by factor numbers from 1: "1", "x1", "x1x2", "x1^2".</summary>
    public string Name => Joined([.. powers.Select((_, f) => FormattableString.Invariant($"x{f + 1}"))], "", "^");

    /// <summary>The term of a name such as "1", "x1", "x1x2", "x1^2".</summary>
    /// <param name="name">Factors are numbered from 1.</param>
    /// <param name="factors">Number of factors.</param>
    /// <exception cref="FormatException">The name is not one of a term of these factors.</exception>
    public static ModelTerm Parse(string name, int factors)
    {
        var powers = new int[factors];
        var match = TermName().Match(name);
        if (!match.Success)
            throw new FormatException($"'{name}' is not a term such as 1, x1, x1x2 or x1^2");
        for (var i = 0; i < match.Groups["factor"].Captures.Count; i++)
        {
            var factor = int.Parse(match.Groups["factor"].Captures[i].Value, CultureInfo.InvariantCulture);
            if (factor < 1 || factor > factors)
                throw new FormatException($"'{name}' has a factor beyond the {factors} there are");
            var power = match.Groups["power"].Captures[i].Value;
            powers[factor - 1] += power.Length == 0 ? 1 : int.Parse(power, CultureInfo.InvariantCulture);
        }

        return new ModelTerm(powers);
    }

    /// <summary>The name by the factors' own names: "spacing × offset", "spacing^2", "constant".</summary>
    public string NamedWith(IReadOnlyList<string> factorNames) => Order == 0 ? "constant" : Joined(factorNames, " × ", "^");

    /// <summary>The value at one design, in the units of the factors.</summary>
    public double Value(IReadOnlyList<double> design)
    {
        var value = 1.0;
        foreach (var f in Multiplied)
            value *= design[f];
        return value;
    }

    /// <summary>Whether this is a higher term that has the other in it, as x1x2 and x1^2 have x1. No term contains itself.</summary>
    public bool Contains(ModelTerm other) => !Equals(other) && powers.Zip(other.powers).All(pair => pair.First >= pair.Second);

    /// <inheritdoc/>
    public bool Equals(ModelTerm? other) => other is not null && powers.AsSpan().SequenceEqual(other.powers);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ModelTerm);

    /// <inheritdoc/>
    public override int GetHashCode() => powers.Aggregate(17, (hash, power) => unchecked((hash * 31) + power));

    /// <summary>The name by factor numbers.</summary>
    public override string ToString() => Name;

    private string Joined(IReadOnlyList<string> names, string between, string raised)
    {
        if (Order == 0)
            return "1";
        return string.Join(between, Enumerable.Range(0, powers.Length).Where(f => powers[f] > 0)
            .Select(f => powers[f] == 1 ? names[f] : FormattableString.Invariant($"{names[f]}{raised}{powers[f]}")));
    }

    [GeneratedRegex(@"^(?:1|(?:x(?<factor>\d{1,4})(?:\^(?<power>\d{1,2})|(?<power>)))+)$")]
    private static partial Regex TermName();
}
