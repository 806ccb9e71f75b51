using FrameOpt.Numerics;

namespace FrameOpt.Analysis;

/// <summary>What a step of one input does to a response, from many places of the cube.</summary>
/// <param name="Steps">Number of steps; those to or from where there is no result are left out.</param>
/// <param name="Mean">Of the changes, scaled to the whole range of the input, in the response's unit.</param>
/// <param name="MeanMagnitude">The same regardless of sign (mu*): how much the input matters.</param>
/// <param name="Deviation">Standard deviation of the changes: 0 for an input that acts alone and linearly.</param>
public readonly record struct ElementaryEffect(int Steps, double Mean, double MeanMagnitude, double Deviation);

/// <summary>Screening of many inputs of a model by elementary effects: random paths through the cube on which every input takes one
/// step.</summary>
/// <remarks>Sources: M. D. Morris 1991, Factorial sampling plans for preliminary computational experiments, Technometrics 33:161-174, with
/// four levels and steps of two thirds; mean of magnitudes by F. Campolongo, J. Cariboni and A. Saltelli 2007 (from memory).</remarks>
public static class ElementaryEffects
{
    private const double Step = 2 / 3.0;

    /// <summary>The effects of each input on each response.</summary>
    /// <param name="inputs">Number of inputs.</param>
    /// <param name="responses">Number of responses.</param>
    /// <param name="paths">Number of paths; each takes one evaluation more than there are inputs.</param>
    /// <param name="seed">The same seed gives the same paths.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    /// <param name="model">The responses at a place, inputs 0 to 1; null where there is no result. It is called from several
    /// threads.</param>
    /// <returns>For each response one effect for each input.</returns>
    public static IReadOnlyList<IReadOnlyList<ElementaryEffect>> Of(
        int inputs, int responses, int paths, ulong seed, int threads, Func<double[], double[]?> model)
    {
        var steps = InParallel.Select(paths, threads, path => Path(inputs, new Pcg32(seed, (ulong)path + 1), model));
        return [.. Enumerable.Range(0, responses).Select(r => (IReadOnlyList<ElementaryEffect>)[.. Enumerable.Range(0, inputs)
            .Select(i => Effect([.. steps.Select(path => path[i]).OfType<double[]>().Select(change => change[r])
                .Where(double.IsFinite)]))])];
    }

    /// <summary>The change of every response with each input, scaled to its whole range; null where there is none.</summary>
    private static double[]?[] Path(int inputs, Pcg32 random, Func<double[], double[]?> model)
    {
        // From level 0 or 1/3 up to 2/3 or 1, or back: as likely from every level.
        double[] at = [.. Enumerable.Range(0, inputs).Select(_ => random.Next(4) / 3.0)];
        var changes = new double[]?[inputs];
        var before = model([.. at]);
        foreach (var input in random.Shuffled([.. Enumerable.Range(0, inputs)]))
        {
            var step = at[input] < 0.5 ? Step : -Step;
            at[input] += step;
            var after = model([.. at]);
            changes[input] = before is null || after is null ? null : [.. after.Zip(before, (a, b) => (a - b) / step)];
            before = after;
        }

        return changes;
    }

    private static ElementaryEffect Effect(double[] changes)
    {
        if (changes.Length == 0)
            return new ElementaryEffect(0, double.NaN, double.NaN, double.NaN);
        var mean = changes.Average();
        var deviation = changes.Length < 2 ? double.NaN
            : Math.Sqrt(changes.Sum(change => (change - mean) * (change - mean)) / (changes.Length - 1));
        return new ElementaryEffect(changes.Length, mean, changes.Average(Math.Abs), deviation);
    }
}
