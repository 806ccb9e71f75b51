using FrameOpt.Search.Evolution;

namespace FrameOpt.Search.Local;

/// <summary>The course of a polish. All designs take a step of one factor at a time together, so that threads have work.</summary>
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

    /// <summary>Two trials of each design that still moves: the gene a step down and a step up, where that is a new design.</summary>
    private void ProposeSteps(int gene)
    {
        owners.Clear();
        for (var i = 0; i < designs; i++)
        {
            if (steps[i] < settings.LastStep || space.Kinds[gene] == GeneKind.Categorical)
                continue;
            var step = space.Kinds[gene] == GeneKind.Discrete ? 1 : steps[i] * (space.High[gene] - space.Low[gene]);
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
