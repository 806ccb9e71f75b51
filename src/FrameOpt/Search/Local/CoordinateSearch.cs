using FrameOpt.Numerics;
using FrameOpt.Search.Evolution;

namespace FrameOpt.Search.Local;

/// <summary>A run of the local search. All designs take a step in the same factor at the same time, so that there is work for several
/// threads.</summary>
internal sealed class CoordinateSearch
{
    private const ulong DirectionSeed = 1;

    /// <summary>A step that grows again could go on for ever.</summary>
    private const int MostRounds = 1000;

    /// <summary>Of a random direction, what must be left at a right angle to the others.</summary>
    private const double LeastPart = 1e-3;

    private readonly LocalSearchSettings settings;
    private readonly GeneSpace space;
    private readonly VisitedDesigns memory;
    private readonly Population members; // the designs, then the trials
    private readonly PopulationEvaluation evaluation;
    private readonly List<int> owners = []; // whose trial each is
    private readonly double[] steps;
    private readonly bool[] moved; // along a factor
    private readonly bool[] slid; // in a direction of several, where no factor could
    private readonly int[] continuous;
    private readonly Pcg32 random = new(DirectionSeed);
    private int designs;

    public CoordinateSearch(Problem problem, int threads, LocalSearchSettings settings)
    {
        this.settings = settings;
        space = new GeneSpace(problem.Factors);
        memory = new VisitedDesigns(space);
        members = new Population(problem, 3 * settings.Designs.Count);
        evaluation = new PopulationEvaluation(problem, space, threads);
        steps = new double[settings.Designs.Count];
        moved = new bool[settings.Designs.Count];
        slid = new bool[settings.Designs.Count];
        continuous = [.. Enumerable.Range(0, space.Genes).Where(gene => !space.IsDiscrete(gene))];
    }

    public IEnumerable<EvaluatedBatch> Run()
    {
        Initialise();
        if (settings.Objectives is null)
        {
            foreach (var batch in evaluation.Run(members, 0, designs))
                yield return batch;
        }

        var achievement = new AchievementFunction(members, designs);
        Array.Fill(steps, settings.FirstStep);
        for (var round = 0; round < MostRounds && steps.AsSpan(0, designs).ContainsAnyInRange(settings.LastStep, 1); round++)
        {
            Array.Clear(moved);
            for (var gene = 0; gene < space.Genes; gene++)
            {
                ProposeSteps(gene);
                foreach (var batch in evaluation.Run(members, designs, owners.Count))
                    yield return batch;
                TakeSteps(achievement, moved);
            }

            Array.Clear(slid);
            foreach (var direction in OrthogonalDirections().Concat(OrthogonalDirections()))
            {
                ProposeSteps(direction);
                foreach (var batch in evaluation.Run(members, designs, owners.Count))
                    yield return batch;
                TakeSteps(achievement, slid);
            }

            for (var i = 0; i < designs; i++)
                steps[i] = moved[i] ? steps[i] : slid[i] ? Math.Min(settings.FirstStep, 2 * steps[i]) : steps[i] / 2;
        }
    }

    private void Initialise()
    {
        for (var d = 0; d < settings.Designs.Count; d++)
        {
            space.FromDesign(settings.Designs[d], members.Of(designs));
            if (!memory.TryAdd(members.Of(designs)))
                continue;
            settings.Objectives?[d].CopyTo(members.ValuesOf(designs));
            designs++;
        }

        var genes = new double[space.Genes];
        foreach (var design in settings.Seen)
        {
            space.FromDesign(design, genes);
            memory.TryAdd(genes);
        }
    }

    /// <summary>Two trials of each design that still moves: one step down and one step up in the gene, where that is a new
    /// design.</summary>
    private void ProposeSteps(int gene)
    {
        owners.Clear();
        for (var i = 0; i < designs; i++)
        {
            if (steps[i] < settings.LastStep)
                continue;
            var step = space.IsDiscrete(gene) ? 1 : steps[i] * (space.High[gene] - space.Low[gene]);
            ReadOnlySpan<double> both = [-step, step];
            foreach (var change in both)
            {
                var trial = members.Of(designs + owners.Count);
                members.Of(i).CopyTo(trial);
                trial[gene] = Math.Clamp(trial[gene] + change, space.Low[gene], space.High[gene]);
                if (memory.TryAdd(trial))
                    owners.Add(i);
            }
        }
    }

    /// <summary>As many random directions of length 1 as there are continuous factors, each at a right angle to the others; none for one
    /// factor or none.</summary>
    private List<double[]> OrthogonalDirections()
    {
        var directions = new List<double[]>();
        if (continuous.Length < 2)
            return directions;
        while (directions.Count < continuous.Length)
        {
            double[] next = [.. continuous.Select(_ => (2 * random.NextDouble()) - 1)];
            foreach (var other in directions)
            {
                var along = next.Zip(other, (a, b) => a * b).Sum();
                next = [.. next.Zip(other, (a, b) => a - (along * b))];
            }

            var length = Math.Sqrt(next.Sum(part => part * part));
            if (length > LeastPart)
                directions.Add(Array.ConvertAll(next, part => part / length));
        }

        return directions;
    }

    /// <summary>Two trials of each design that stalls: a step in a direction of the continuous factors, and one against it.</summary>
    private void ProposeSteps(double[] direction)
    {
        owners.Clear();
        for (var i = 0; i < designs; i++)
        {
            if (steps[i] < settings.LastStep || moved[i] || slid[i])
                continue;
            ReadOnlySpan<double> both = [-steps[i], steps[i]];
            foreach (var step in both)
            {
                var trial = members.Of(designs + owners.Count);
                members.Of(i).CopyTo(trial);
                foreach (var (place, gene) in continuous.Index())
                {
                    var (low, high) = (space.Low[gene], space.High[gene]);
                    trial[gene] = Math.Clamp(trial[gene] + (step * direction[place] * (high - low)), low, high);
                }

                if (memory.TryAdd(trial))
                    owners.Add(i);
            }
        }
    }

    private void TakeSteps(AchievementFunction achievement, bool[] taken)
    {
        for (var t = 0; t < owners.Count; t++)
        {
            var owner = owners[t];
            if (!achievement.IsBetter(members, designs + t, owner, owner))
                continue;
            if (members.Violation[owner] > 0)
                achievement.SetReference(members, designs + t, owner);
            members.Copy(designs + t, owner);
            taken[owner] = true;
        }
    }
}
