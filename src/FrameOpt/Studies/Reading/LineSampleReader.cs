using static System.FormattableString;

namespace FrameOpt.Studies.Reading;

/// <summary>Reads customers that are to be drawn at random.</summary>
internal static class LineSampleReader
{
    /// <summary>The customers, and the sample in words.</summary>
    public static (IReadOnlyList<LineCustomer> Customers, string Words) Read(Section sample, IReadOnlyList<LineOption> options)
    {
        var before = sample.Findings.Count;
        var (count, seed) = (sample.Whole("sample", 1, 1, LineCustomersReader.Most), sample.Whole("seed", 1, 0, int.MaxValue));
        if (!sample.Has("seed"))
            sample.Findings.Assume("seed of the sampled customers", "1", "assumption: any other does as well");
        var (mean, deviation, from, to) = Mass(sample);
        IReadOnlyList<IReadOnlyList<double>> shares = [.. options.Select(option => Shares(sample, option))];
        if (sample.Findings.Count > before)
            return ([], "");
        var draw = new LineSample(count, (ulong)seed, mean, deviation, from, to, shares);
        return (draw.Draw(), Invariant($"{count} sampled with seed {seed}: pilot mass {mean:0.#} kg, standard deviation {deviation:0.#} kg, {from:0.#} to {to:0.#} kg"));
    }

    /// <summary>Shares as they may be written.</summary>
    public static string Example(LineOption option) =>
        $"{{ {string.Join(", ", option.Choices.Select(choice => Invariant($"{choice}: {100.0 / option.Choices.Count:0} %")))} }}";

    private static (double Mean, double Deviation, double From, double To) Mass(Section sample)
    {
        if (sample.Child("pilot_mass", StudyKeys.LineSampleMass) is not { } mass)
            return default;
        var mean = mass.Number("mean", Dimension.Mass, LineCustomersReader.Mass);
        var deviation = mass.Number("sd", Dimension.Mass, Bound.Above0(100, "100 kg"));
        var (from, to) = (mass.Number("from", Dimension.Mass, LineCustomersReader.Mass), mass.Number("to", Dimension.Mass, LineCustomersReader.Mass));
        if (from > mean || to < mean)
            mass.Findings.Mistake(mass.At("mean"), "The mean does not lie between from and to.", "Choose ends on either side of it.");
        else if (to - from < deviation / 5 || to - from < 1)
            mass.Findings.Mistake(mass.At("to"), "from and to are so close that hardly any draw lies between them.", "Choose ends at least 1 kg and a fifth of the standard deviation apart, or list the customers.");
        return (mean, deviation, from, to);
    }

    /// <summary>One share for each choice; those not named have none.</summary>
    private static IReadOnlyList<double> Shares(Section sample, LineOption option)
    {
        var shares = new double[option.Choices.Count];
        var example = $"{option.Name}: {Example(option)}";
        foreach (var entry in sample.Entries(option.Name))
        {
            var choice = LineCustomersReader.Choice(option, entry.Key.Text, entry.Key, "", sample.Findings);
            var share = Quantity.Read(entry.Value, $"line.customers.{option.Name}.{entry.Key.Text}", example, Dimension.Share, Bound.From0(1_000_000, "1000000"), sample.Findings);
            if (choice >= 0)
                shares[choice] = share?.Base ?? double.NaN;
        }

        if (sample.Value(option.Name) is Node.Map && shares.Sum() == 0)
            sample.Findings.Mistake(sample.At(option.Name), $"No choice of {option.Name} has a share.", $"Write for example `{example}`.");
        return shares;
    }
}
