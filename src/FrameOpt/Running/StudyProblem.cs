using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;
using FrameOpt.Search;
using FrameOpt.Search.Evolution;
using FrameOpt.Studies;
using FrameOpt.Uncertainty;

namespace FrameOpt.Running;

/// <summary>A study as a problem for a search: binds factors to geometry inputs, objectives and limits to responses.</summary>
public sealed class StudyProblem
{
    private readonly Study study;
    private readonly MissionModel mission;
    private readonly GeometryInput[] free;
    private readonly List<Response> overCases;
    private readonly FrameGeometry asBuilt;

    /// <summary>The problem of a study, with the model that evaluates it.</summary>
    public StudyProblem(Study study, MissionModel mission)
    {
        this.study = study;
        this.mission = mission;
        free = [.. FactorCatalogue.SlowestFirst.Where(input => study.FreeFactors.Any(factor => factor.Input == input))];
        overCases = [.. study.ResponsesOverCases];
        asBuilt = FrameGeometry.AsBuilt(study.Machine);
        Problem = new Problem(
            [.. free.Select(study.Factor).Select(SearchFactor), .. Holes(study.Holes)],
            study.Holes is null ? Array.IndexOf(free, GeometryInput.LateralOffset) : free.Length + 1,
            [.. study.Objectives.Select(objective => new Objective(objective.Response.Name, objective.Maximise))],
            [.. study.Limits.Select(limit => limit.AsConstraint)],
            Evaluate);
    }

    /// <summary>The problem, for a search.</summary>
    public Problem Problem { get; }

    /// <summary>The model of a study's machine, wing and mission.</summary>
    public static MissionModel Model(Study study) => new(
        study.Machine,
        study.Wing,
        study.Mission,
        new ResponseReferences(
            study.Strength?.LimitLoadFactor,
            study.Strength?.OverhangMetres,
            study.Baseline,
            [.. study.Factors.Where(f => f.RangeSi > 0).Select(f => KeyValuePair.Create(f.Input, f.RangeSi))]))
    {
        Sampling = new CaseSampling(
            new NoiseSample(study.Noise, study.Noise.Sources.Count == 0 ? 1 : study.Noise.Cases, study.Noise.Seed).Cases,
            [.. study.LimitsOfOneCase.Select(limit => new BoundedResponse(
                limit.Response, limit.Magnitude, limit.AtLeast ?? double.NegativeInfinity, limit.AtMost ?? double.PositiveInfinity))]),
    };

    /// <summary>The geometry of a design given as factor values in the problem's order.</summary>
    public FrameGeometry Geometry(ReadOnlySpan<double> values)
    {
        var geometry = asBuilt;
        for (var f = 0; f < free.Length; f++)
            geometry = geometry.With(free[f], values[f]);
        return study.Holes is null ? geometry : HolePattern.Put(geometry, values[^2], values[^1]);
    }

    private static IEnumerable<Factor> Holes(HolePattern? holes) => holes is null ? []
        : [new Factor.Discrete("left hole", holes.Left.Places), new Factor.Discrete("right hole", holes.Right.Places)];

    private static Factor SearchFactor(StudyFactor factor) => factor.IsContinuous
        ? new Factor.Continuous(factor.Name, factor.LevelsSi[0], factor.LevelsSi[^1])
        : new Factor.Discrete(factor.Name, factor.LevelsSi);

    private void Evaluate(EvaluatedBatch batch)
    {
        var row = new MissionRow(mission);
        var sampled = overCases.Count > 0 ? new SampledRow(mission, overCases) : null;
        var design = new double[Problem.Factors.Count];
        for (var r = 0; r < batch.Designs.RowCount; r++)
        {
            var values = batch.Designs.RowValues(r, Problem);
            var at = r * values.Length;
            batch.Designs.Row(r, design.Length).CopyTo(design);
            if (study.Holes is null)
            {
                EvaluateRow(row, sampled, Geometry(design), values, batch, at);
                continue;
            }

            // Another hole changes the spacing too, so that each design is a row of its own.
            for (var i = 0; i < values.Length; i++)
            {
                design[^1] = values[i];
                var geometry = Geometry(design);
                EvaluateRow(row, sampled, geometry, [geometry.OffsetMetres], batch, at + i);
            }
        }
    }

    /// <summary>Designs that differ in their offset only.</summary>
    private void EvaluateRow(
        MissionRow row, SampledRow? sampled, in FrameGeometry geometry, ReadOnlySpan<double> offsets, EvaluatedBatch batch, int at)
    {
        var codes = batch.Failures.AsSpan(at, offsets.Length);
        var failure = row.Prepare(geometry);
        if (failure.Kind != FailureKind.None)
        {
            codes.Fill(failure.Code);
            return;
        }

        row.FindFailures(offsets, codes);
        if (sampled is not null)
            FillOverCases(sampled, row.Geometry, offsets, batch, at);
        for (var o = 0; o < study.Objectives.Count; o++)
        {
            var objective = study.Objectives[o];
            if (objective.Response.IsOverCases)
                continue;
            var values = batch.Objectives[o].AsSpan(at, offsets.Length);
            objective.Response.Fill(row, objective.Magnitude, offsets, values);
            if (objective.Maximise)
                RowVectors.Negate(values);
        }

        for (var l = 0; l < study.Limits.Count; l++)
        {
            var limit = study.Limits[l];
            if (!limit.Response.IsOverCases)
                limit.Response.Fill(row, limit.Magnitude, offsets, batch.ConstraintValues[l].AsSpan(at, offsets.Length));
        }
    }

    /// <summary>Fills objectives and limits that are responses over cases. A design with an objective without bound fails: a case that does
    /// not fly decides it, and nothing can be compared with that.</summary>
    private void FillOverCases(SampledRow sampled, in FrameGeometry geometry, ReadOnlySpan<double> offsets, EvaluatedBatch batch, int at)
    {
        for (var first = 0; first < offsets.Length; first += SampledRow.LongestRow)
        {
            var part = offsets[first..Math.Min(first + SampledRow.LongestRow, offsets.Length)];
            sampled.Prepare(geometry, part);
            for (var o = 0; o < study.Objectives.Count; o++)
            {
                var objective = study.Objectives[o];
                if (overCases.IndexOf(objective.Response) is not (>= 0 and var r))
                    continue;
                var values = batch.Objectives[o].AsSpan(at + first, part.Length);
                sampled.Fill(r, values);
                if (objective.Response.Entry.LargestRanked is null)
                    FailUnbounded(values, batch.Failures.AsSpan(at + first, part.Length));
                if (objective.Maximise)
                    RowVectors.Negate(values);
            }

            for (var l = 0; l < study.Limits.Count; l++)
            {
                if (overCases.IndexOf(study.Limits[l].Response) is >= 0 and var r)
                    sampled.Fill(r, batch.ConstraintValues[l].AsSpan(at + first, part.Length));
            }
        }
    }

    private static void FailUnbounded(ReadOnlySpan<double> values, Span<ushort> codes)
    {
        for (var i = 0; i < values.Length; i++)
        {
            if (!double.IsFinite(values[i]) && codes[i] == 0)
                codes[i] = new FlightFailure(FailureKind.SomeCase, 0).Code;
        }
    }
}

/// <summary>The search a study asks for.</summary>
internal static class StudySearch
{
    /// <summary>The evolutionary search of a setting.</summary>
    /// <param name="study">The study; a start has values for its factors.</param>
    /// <param name="setting">Of the study.</param>
    /// <param name="problem">The study's, whose factors may be in another order.</param>
    public static ISearch Of(Study study, SearchSetting.Evolutionary setting, Problem problem)
    {
        int[] places = [.. problem.Factors.Select(factor => study.Factors.ToList().FindIndex(other => other.Name == factor.Name))];
        var settings = new EvolutionSettings(setting.Population, setting.Seed)
        {
            Start = [.. Start(study, setting.Start).Select(design => Array.ConvertAll(places, place => design[place]))],
        };
        return setting.Method == SearchMethod.NsgaII ? new Nsga2Search(settings) : new Nsga3Search(settings);
    }

    /// <summary>The designs to start from: values in m or rad in the order of the study's factors.</summary>
    private static IEnumerable<IReadOnlyList<double>> Start(Study study, SearchStart? start) => start switch
    {
        SearchStart.FromFile file => file.Designs,
        SearchStart.FromPlan => StudyPlan.Of(study, StudyProblem.Model(study)).Designs
            .Select(design => (IReadOnlyList<double>)[.. study.Factors.Select(factor => design[factor.Input])]),
        _ => [],
    };
}
