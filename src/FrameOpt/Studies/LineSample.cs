using FrameOpt.Plans;

namespace FrameOpt.Studies;

/// <summary>Customers drawn at random: pilot mass from a normal distribution cut off at two ends, options by their shares.</summary>
/// <param name="Count">How many.</param>
/// <param name="Seed">The same seed gives the same customers.</param>
/// <param name="MeanKilograms">Of the distribution before it is cut off.</param>
/// <param name="DeviationKilograms">Its standard deviation, above 0.</param>
/// <param name="FromKilograms">No lighter; at most the mean.</param>
/// <param name="ToKilograms">No heavier; at least the mean.</param>
/// <param name="Shares">For each option the share of each choice, 0 or more, not all 0.</param>
public sealed record LineSample(
    int Count, ulong Seed, double MeanKilograms, double DeviationKilograms, double FromKilograms, double ToKilograms, IReadOnlyList<IReadOnlyList<double>> Shares)
{
    private const double ScaleKilograms = 0.1;

    /// <summary>The customers. Masses are to a tenth of a kilogram, as a scale reads, so that many customers are alike.</summary>
    public IReadOnlyList<LineCustomer> Draw()
    {
        var random = new Pcg32(Seed);
        var customers = new LineCustomer[Count];
        for (var c = 0; c < Count; c++)
        {
            var kilograms = Mass(random);
            var outfit = 0;
            foreach (var shares in Shares)
                outfit = outfit * shares.Count + Choice(random, shares);
            customers[c] = new LineCustomer(FormattableString.Invariant($"sampled {c + 1}"), kilograms, outfit, 1);
        }

        return customers;
    }

    /// <summary>A normal deviate, drawn again until it lies between the ends.</summary>
    /// <remarks>Source: G. E. P. Box and M. E. Muller 1958, Annals of Mathematical Statistics 29, 610-611 (from memory).</remarks>
    private double Mass(Pcg32 random)
    {
        while (true)
        {
            var radius = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble()));
            var kilograms = MeanKilograms + DeviationKilograms * radius * Math.Cos(2 * Math.PI * random.NextDouble());
            var read = Math.Round(Math.Round(kilograms / ScaleKilograms) * ScaleKilograms, 1);
            if (read >= FromKilograms && read <= ToKilograms)
                return read;
        }
    }

    private static int Choice(Pcg32 random, IReadOnlyList<double> shares)
    {
        var left = random.NextDouble() * shares.Sum();
        for (var choice = 0; choice < shares.Count; choice++)
        {
            left -= shares[choice];
            if (left < 0)
                return choice;
        }

        return shares.Count - 1;
    }
}
