using BenchmarkDotNet.Attributes;
using FrameOpt.Model.Mission;
using FrameOpt.Running;
using FrameOpt.Search;
using FrameOpt.Studies;
using FrameOpt.Tests.Running;

namespace FrameOpt.Benchmarks;

/// <summary>The model over designs that share nothing: 10,000 random ones, five phases, the objectives and limits of
/// studies/fine-grid.</summary>
[MemoryDiagnoser]
public class SingleDesignBenchmarks
{
    private const int BatchSize = 100;
    private const int Designs = 10_000;

    private EvaluatedBatch[] batches = [];
    private Problem problem = null!;

    [GlobalSetup]
    public void Setup()
    {
        var study = WorkedStudy.Million(
            null,
            new StudyLimit(new Response.OfMission(MissionQuantity.TwistMarginWorst), false, AtLeast: 3, AtMost: null),
            new StudyLimit(new Response.OfMission(MissionQuantity.EffortWorst), false, AtLeast: null, AtMost: 0.6));
        study = study with { Factors = [.. study.Factors.Select(factor => factor with { IsContinuous = true })] };
        problem = new StudyProblem(study, StudyProblem.Model(study)).Problem;
        var random = new Random(7);
        batches = [.. Enumerable.Range(0, Designs / BatchSize).Select(b =>
        {
            var values = Enumerable.Range(0, BatchSize).SelectMany(_ => problem.Factors.Cast<Factor.Continuous>())
                .Select(factor => factor.From + random.NextDouble() * (factor.To - factor.From));
            return new EvaluatedBatch(problem, DesignBatch.Single(b * BatchSize, BatchSize, [.. values]));
        })];
    }

    [Benchmark(OperationsPerInvoke = Designs)]
    public double Evaluate()
    {
        foreach (var batch in batches)
            problem.Evaluate(batch);
        return batches[^1].Objectives[0][0];
    }
}
