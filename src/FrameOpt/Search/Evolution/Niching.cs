using FrameOpt.Numerics;

namespace FrameOpt.Search.Evolution;

/// <summary>Reference points and their niche counts: the number of designs nearest to each.</summary>
/// <remarks>Source: Deb and Jain 2014, algorithms 3 and 4 (from memory).</remarks>
internal sealed class Niching(double[][] referencePoints, Pcg32 random)
{
    private readonly double[] parts = [.. referencePoints.SelectMany(referencePoint => Unit(referencePoint))];
    private readonly double[] point = new double[referencePoints[0].Length];
    private readonly int[] nicheCounts = new int[referencePoints.Length];
    private readonly int[] first = new int[referencePoints.Length];
    private readonly int[] remaining = new int[referencePoints.Length];
    private int[] niche = [];
    private int[] grouped = [];
    private double[] distance = [];

    /// <summary>Resets the counts, for a number of members.</summary>
    public void Clear(int population)
    {
        Array.Clear(nicheCounts);
        if (niche.Length < population)
            (niche, grouped, distance) = (new int[population], new int[population], new double[population]);
    }

    /// <summary>Counts designs to their nearest reference points.</summary>
    public void Count(Population population, ReadOnlySpan<int> designs, ObjectiveNormalisation normalisation)
    {
        foreach (var design in designs)
        {
            Associate(population, design, normalisation);
            nicheCounts[niche[design]]++;
        }
    }

    /// <summary>Moves the candidates that fill the least crowded niches to the front.</summary>
    public void Choose(Population population, Span<int> candidates, int places, ObjectiveNormalisation normalisation)
    {
        Group(population, candidates, normalisation);
        for (var place = 0; place < places; place++)
        {
            var referencePoint = EmptiestWithCandidates();
            candidates[place] = Take(referencePoint);
            nicheCounts[referencePoint]++;
        }

        var rest = places;
        for (var d = 0; d < remaining.Length; d++)
        {
            grouped.AsSpan(first[d], remaining[d]).CopyTo(candidates[rest..]);
            rest += remaining[d];
        }
    }

    /// <summary>Groups candidates by reference point.</summary>
    private void Group(Population population, ReadOnlySpan<int> candidates, ObjectiveNormalisation normalisation)
    {
        Array.Clear(remaining);
        foreach (var candidate in candidates)
        {
            Associate(population, candidate, normalisation);
            remaining[niche[candidate]]++;
        }

        for (var d = 1; d < remaining.Length; d++)
            first[d] = first[d - 1] + remaining[d - 1];
        Array.Clear(remaining);
        foreach (var candidate in candidates)
        {
            var d = niche[candidate];
            grouped[first[d] + remaining[d]++] = candidate;
        }
    }

    /// <summary>A random reference point among those with candidates and the fewest designs.</summary>
    private int EmptiestWithCandidates()
    {
        var fewest = int.MaxValue;
        var ties = 0;
        for (var d = 0; d < nicheCounts.Length; d++)
        {
            if (remaining[d] == 0 || nicheCounts[d] > fewest)
                continue;
            ties = nicheCounts[d] == fewest ? ties + 1 : 1;
            fewest = nicheCounts[d];
        }

        var pick = random.Next(ties);
        for (var d = 0; ; d++)
        {
            if (remaining[d] > 0 && nicheCounts[d] == fewest && pick-- == 0)
                return d;
        }
    }

    /// <summary>The nearest candidate of a reference point without a design, otherwise a random one.</summary>
    private int Take(int referencePoint)
    {
        var group = grouped.AsSpan(first[referencePoint], remaining[referencePoint]);
        var pick = 0;
        if (nicheCounts[referencePoint] > 0)
            pick = random.Next(group.Length);
        else
        {
            for (var i = 1; i < group.Length; i++)
            {
                if (distance[group[i]] < distance[group[pick]])
                    pick = i;
            }
        }

        var taken = group[pick];
        group[pick] = group[^1];
        remaining[referencePoint]--;
        return taken;
    }

    private void Associate(Population population, int member, ObjectiveNormalisation normalisation)
    {
        normalisation.Normalise(population.ValuesOf(member), point);
        var most = double.NegativeInfinity;
        var squares = 0.0;
        foreach (var value in point)
            squares += value * value;
        for (var d = 0; d < nicheCounts.Length; d++)
        {
            var along = 0.0;
            for (var j = 0; j < point.Length; j++)
                along += parts[d * point.Length + j] * point[j];
            if (along > most)
                (most, niche[member]) = (along, d);
        }

        distance[member] = squares - most * most;
    }

    private static double[] Unit(double[] referencePoint)
    {
        var length = Math.Sqrt(referencePoint.Sum(part => part * part));
        return Array.ConvertAll(referencePoint, part => part / length);
    }
}
