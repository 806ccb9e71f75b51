using FrameOpt.Numerics;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Sections;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;
using static System.FormattableString;

namespace FrameOpt.StudyFile;

/// <summary>Reads customers that are to be drawn at random.</summary>
internal static class ProductLineSampleReader
{
    /// <summary>The customers, and the sample in words.</summary>
    public static (IReadOnlyList<ProductLineCustomer> Customers, string Description) Read(
        Section sample, IReadOnlyList<ProductLineOption> options)
    {
        var before = sample.DiagnosticBag.Count;
        var (count, seed) = (sample.Integer("sample", 1, 1, ProductLineCustomersReader.MaxCustomers),
            sample.Integer("seed", 1, 0, int.MaxValue));
        if (!sample.Has("seed"))
            sample.DiagnosticBag.AddAssumption("seed of the sampled customers", "1", "assumption: any other does as well");
        var (mean, deviation, from, to) = Mass(sample);
        IReadOnlyList<IReadOnlyList<double>> shares = [.. options.Select(option => Shares(sample, option))];
        if (sample.DiagnosticBag.Count > before)
            return ([], "");
        var draw = new ProductLineSample(count, (ulong)seed, mean, deviation, from, to, shares);
        var key = Invariant($"sample {draw} {string.Join(";", shares.Select(of => string.Join(",", of)))}");
        return (sample.DiagnosticBag.Cache.Get(key, sample.DiagnosticBag, draw.Draw),
            Invariant($"{count} sampled with seed {seed}: pilot mass {mean:0.#} kg, standard deviation {deviation:0.#} kg, ")
                + Invariant($"{from:0.#} to {to:0.#} kg"));
    }

    private static (double Mean, double Deviation, double From, double To) Mass(Section sample)
    {
        if (sample.Child("pilot_mass", LineKeys.ProductLineSampleMass) is not { } mass)
            return default;
        var mean = mass.Number("mean", Dimension.Mass, ProductLineCustomersReader.Mass);
        var deviation = mass.Number("sd", Dimension.Mass, AllowedRange.PositiveUpTo(100, "100 kg"));
        var (from, to) = (mass.Number("from", Dimension.Mass, ProductLineCustomersReader.Mass),
            mass.Number("to", Dimension.Mass, ProductLineCustomersReader.Mass));
        if (from > mean || to < mean)
            mass.DiagnosticBag.Add(mass.At("mean"), "The mean does not lie between from and to.", "Choose ends on either side of it.");
        else if (to - from < deviation / 5 || to - from < 1)
            mass.DiagnosticBag.Add(mass.At("to"), "from and to are so close that hardly any draw lies between them.",
                "Choose ends at least 1 kg and a fifth of the standard deviation apart, or list the customers.");
        return (mean, deviation, from, to);
    }

    /// <summary>One share for each choice; those not named have none.</summary>
    private static IReadOnlyList<double> Shares(Section sample, ProductLineOption option)
    {
        var shares = new double[option.Choices.Count];
        var named = new HashSet<int>();
        foreach (var entry in sample.Entries(option.Name))
        {
            var choice = ProductLineCustomersReader.Choice(option, entry.Key.Text, entry.Key, "", sample.DiagnosticBag);
            var share = Quantity.Read(entry.Value, $"line.customers.{option.Name}.{entry.Key.Text}", Dimension.Share,
                AllowedRange.NonNegativeUpTo(1_000_000, "1000000"), sample.DiagnosticBag);
            if (choice >= 0 && !named.Add(choice))
                sample.DiagnosticBag.Add(entry.Key, $"{option.Choices[choice]} has a share twice.", "Remove one of the two.");
            if (choice >= 0)
                shares[choice] = share?.Base ?? double.NaN;
        }

        if (sample.Value(option.Name) is Node.Map && shares.Sum() == 0)
            sample.DiagnosticBag.Add(sample.At(option.Name), $"No choice of {option.Name} has a share.",
                "Give each choice its share of the customers.");
        return shares;
    }
}

/// <summary>Customers drawn at random: pilot mass from a normal distribution truncated at two ends, options by their shares.</summary>
/// <param name="Count">Number of customers.</param>
/// <param name="Seed">The same seed gives the same customers.</param>
/// <param name="MeanKilograms">Mean of the distribution before truncation.</param>
/// <param name="DeviationKilograms">Its standard deviation, above 0.</param>
/// <param name="FromKilograms">Smallest mass; at most the mean.</param>
/// <param name="ToKilograms">Largest mass; at least the mean.</param>
/// <param name="Shares">For each option the share of each choice, at least 0, not all 0.</param>
public sealed record ProductLineSample(
    int Count, ulong Seed, double MeanKilograms, double DeviationKilograms, double FromKilograms, double ToKilograms,
        IReadOnlyList<IReadOnlyList<double>> Shares)
{
    private const double ScaleKilograms = 0.1;

    /// <summary>The customers. Masses are to a tenth of a kilogram, as a scale reads, so that many customers are identical.</summary>
    public IReadOnlyList<ProductLineCustomer> Draw()
    {
        var random = new Pcg32(Seed);
        var customers = new ProductLineCustomer[Count];
        for (var c = 0; c < Count; c++)
        {
            var kilograms = Mass(random);
            var configuration = 0;
            foreach (var shares in Shares)
                configuration = configuration * shares.Count + Choice(random, shares);
            customers[c] = new ProductLineCustomer(FormattableString.Invariant($"sampled {c + 1}"), kilograms, configuration, 1);
        }

        return customers;
    }

    /// <summary>A normal deviate, redrawn until it lies between the ends.</summary>
    /// <remarks>Source: G. E. P. Box and M. E. Muller 1958, Annals of Mathematical Statistics 29, 610-611 (from memory).</remarks>
    private double Mass(Pcg32 random)
    {
        while (true)
        {
            var radius = Math.Sqrt(-2 * Elementary.Log(1 - random.NextDouble()));
            var kilograms = MeanKilograms + DeviationKilograms * radius * Elementary.Cos(2 * Math.PI * random.NextDouble());
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
