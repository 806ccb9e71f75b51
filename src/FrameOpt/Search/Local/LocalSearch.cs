using FrameOpt.Search.Evolution;

namespace FrameOpt.Search.Local;

/// <summary>Improves designs one factor at a time, with decreasing steps. Accepts any factors, two or more objectives and any
/// constraints.</summary>
/// <remarks>Source: coordinate search, R. Hooke and T. A. Jeeves 1961, "Direct search" solution of numerical and statistical problems, J.
/// ACM 8:212-229 (without its pattern moves), on the function of <see cref="AchievementFunction"/>; both from memory. The designs come
/// first, then the trials; none is evaluated twice. It ends when no step improves any design.</remarks>
public sealed class LocalSearch : ISearch
{
    private readonly LocalSearchSettings settings;

    /// <summary>Initialises a new instance for a problem.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A setting is out of its range.</exception>
    public LocalSearch(LocalSearchSettings settings)
    {
        settings.Check();
        this.settings = settings;
    }

    /// <inheritdoc/>
    public IEnumerable<EvaluatedBatch> Run(Problem problem, int threads) => new CoordinateSearch(problem, threads, settings).Run();
}

/// <summary>Settings of a local search.</summary>
/// <param name="Designs">Designs to improve, each with a value for every factor in the problem's order. A value is moved to the nearest the
/// factor allows.</param>
public sealed record LocalSearchSettings(IReadOnlyList<double[]> Designs)
{
    /// <summary>The designs' objectives, smaller is better, where they are feasible and known; null to evaluate them first.</summary>
    public IReadOnlyList<double[]>? Objectives { get; init; }

    /// <summary>Designs evaluated before, none of which is evaluated again.</summary>
    public IReadOnlyList<double[]> Seen { get; init; } = [];

    /// <summary>The first step of a continuous factor, as a share of its range.</summary>
    public double FirstStep { get; init; } = 0.05;

    /// <summary>Steps are halved until they are below this share of the range.</summary>
    public double LastStep { get; init; } = 0.0005;

    /// <summary>Checks the ranges of the settings.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A setting is out of its range.</exception>
    internal void Check()
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(LastStep);
        ArgumentOutOfRangeException.ThrowIfLessThan(FirstStep, LastStep);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(FirstStep, 1);
    }
}

/// <summary>A run of the local search. All designs take a step in the same factor at the same time, so that there is work for several
/// threads.</summary>
internal sealed class CoordinateSearch
{
    private readonly LocalSearchSettings settings;
    private readonly GeneSpace space;
    private readonly VisitedDesigns memory;
    private readonly Population members; // the designs, then the trials
    private readonly PopulationEvaluation evaluation;
    private readonly List<int> owners = []; // whose trial each is
    private readonly double[] steps;
    private readonly bool[] moved;
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
        while (steps.AsSpan(0, designs).ContainsAnyInRange(settings.LastStep, 1))
        {
            Array.Clear(moved);
            for (var gene = 0; gene < space.Genes; gene++)
            {
                ProposeSteps(gene);
                foreach (var batch in evaluation.Run(members, designs, owners.Count))
                    yield return batch;
                TakeSteps(achievement);
            }

            for (var i = 0; i < designs; i++)
                steps[i] = moved[i] ? steps[i] : steps[i] / 2;
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

    private void TakeSteps(AchievementFunction achievement)
    {
        for (var t = 0; t < owners.Count; t++)
        {
            var owner = owners[t];
            if (!achievement.IsBetter(members, designs + t, owner, owner))
                continue;
            if (members.Violation[owner] > 0)
                achievement.SetReference(members, designs + t, owner);
            members.Copy(designs + t, owner);
            moved[owner] = true;
        }
    }
}
