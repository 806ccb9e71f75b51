using FrameOpt.Model;
using FrameOpt.Search;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>The geometries a line may be chosen from, in rows that differ in lateral offset only.</summary>
/// <remarks>Where engines turn both ways and a geometry may serve one way only, every geometry stands twice among the candidates, once for
/// each rotation, and is not allowed for the other: no choice then gives one geometry to both, and the proof holds as it is.</remarks>
public sealed class ProductLineCandidates
{
    private readonly GeometryInput[] inputs;
    private readonly FrameGeometry[] designs;
    private readonly Rotation?[] rotations;

    private ProductLineCandidates(GeometryInput[] inputs, IEnumerable<(Rotation? Rotation, FrameGeometry Design)> ordered)
    {
        this.inputs = inputs;
        var all = ordered.ToList();
        designs = [.. all.Select(one => one.Design)];
        rotations = [.. all.Select(one => one.Rotation)];
        var offsets = new List<List<double>>();
        for (var c = 0; c < designs.Length; c++)
        {
            if (c == 0 || rotations[c - 1] != rotations[c] || designs[c].OffsetMetres <= designs[c - 1].OffsetMetres
                || designs[c - 1] with { OffsetMetres = 0 } != designs[c] with { OffsetMetres = 0 })
                offsets.Add([]);
            offsets[^1].Add(designs[c].OffsetMetres);
        }

        Offsets = [.. offsets.Select(row => row.ToArray())];
    }

    /// <summary>Number of candidates.</summary>
    public int Count => designs.Length;

    /// <summary>Number of different geometries.</summary>
    public int Geometries => designs.Distinct().Count();

    /// <summary>The lateral offsets of each row in m, increasing; candidates are numbered row by row.</summary>
    public IReadOnlyList<double[]> Offsets { get; }

    /// <summary>The designs as built on the study's own machine.</summary>
    public IReadOnlyList<FrameGeometry> Designs => designs;

    /// <summary>Every design of a study's grid, after the fixed geometries of its line.</summary>
    public static ProductLineCandidates OfGrid(Study study)
    {
        var problem = new StudyProblem(study, StudyProblem.Model(study));
        var grid = new Grid(problem.Problem);
        return Of(study, Enumerable.Range(0, (int)grid.Count).Select(number => problem.Geometry(grid.Design(number))));
    }

    /// <summary>Some designs of a study, after the fixed geometries of its line.</summary>
    public static ProductLineCandidates Of(Study study, IEnumerable<FrameGeometry> designs)
    {
        var inputs = Inputs(study);
        // Slowest input first, the offset last: so that shared work is done once per row.
        var byInputs = Comparer<FrameGeometry>.Create(
            (a, b) => inputs.Select(input => a[input].CompareTo(b[input])).FirstOrDefault(order => order != 0));
        List<(Rotation? Rotation, FrameGeometry Design)> fixedOnes =
            [.. (study.Line?.Fixed ?? []).Select(one => (one.Turns, one.Design))];
        return new(inputs, [.. fixedOnes, .. ForRotations(study, designs).Except(fixedOnes)
            .OrderBy(one => one.Rotation).ThenBy(one => one.Design, byInputs)]);
    }

    /// <summary>Some of these candidates, in the same order.</summary>
    public ProductLineCandidates Only(IEnumerable<int> candidates) =>
        new(inputs, candidates.Order().Select(candidate => (rotations[candidate], designs[candidate])));

    /// <summary>True unless the candidate is for engines that turn the other way.</summary>
    public bool Suits(Machine machine, int candidate) =>
        rotations[candidate] is not { } rotation || rotation == machine.Propeller.Rotation;

    /// <summary>True where both are for engines that turn the same way.</summary>
    public bool TurnAlike(int one, int other) => rotations[one] == rotations[other];

    /// <summary>A candidate on a machine: its factors, and the machine's own values for all else.</summary>
    public FrameGeometry On(Machine machine, int candidate)
    {
        var geometry = FrameGeometry.AsBuilt(machine);
        foreach (var input in inputs)
            geometry = geometry.With(input, designs[candidate][input]);
        return geometry;
    }

    /// <summary>A group key for each candidate, equal for those that may be in one line; null when all may.</summary>
    public int[]? Groups(ProductLineCommon common) => common switch
    {
        ProductLineCommon.Frame => Keys(designs.Select(design => design with { OffsetMetres = 0 })),
        ProductLineCommon.Spacing => Keys(designs.Select(design => design.SpacingMetres)),
        _ => null,
    };

    private static GeometryInput[] Inputs(Study study) =>
        [.. FactorCatalogue.SlowestFirst.Where(input => study.Factors.Any(factor => factor.Input == input))];

    private static IEnumerable<(Rotation? Rotation, FrameGeometry Design)> ForRotations(Study study, IEnumerable<FrameGeometry> designs) =>
        study.Line is { SeparateRotations: true, Rotations: var rotations }
            ? designs.SelectMany(design => rotations.Select(rotation => ((Rotation?)rotation, design)))
            : designs.Select(design => ((Rotation?)null, design));

    private static int[] Keys<T>(IEnumerable<T> values)
        where T : notnull
    {
        var known = new Dictionary<T, int>();
        return [.. values.Select(value => known.TryGetValue(value, out var key) ? key : known[value] = known.Count)];
    }
}
