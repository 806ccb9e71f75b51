using System.Text.RegularExpressions;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;
using FrameOpt.Plans;

namespace FrameOpt.Tests.StudyFile.Sections;

/// <summary>The group plan of a study file.</summary>
public class PlanReadingTests
{
    private static readonly int planLine = WorkedStudyText.Text.Split('\n').Length;

    public static TheoryData<string, PlanRequest> Kinds => new()
    {
        { "kind: full factorial", new PlanRequest.FullFactorial(2) },
        { "kind: full factorial, levels: 3", new PlanRequest.FullFactorial(3) },
        { "kind: fractional factorial, most_runs: 8", new PlanRequest.FractionWithMaxRuns(8) },
        { "kind: Plackett-Burman", new PlanRequest.PlackettBurman(null) },
        { "kind: Plackett-Burman, runs: 12", new PlanRequest.PlackettBurman(12) },
        { "kind: central composite", new PlanRequest.CentralComposite(AxialRule.FaceCentred, 1) },
        { "kind: central composite, axial: rotatable, centre_runs: 3", new PlanRequest.CentralComposite(AxialRule.Rotatable, 3) },
        { "kind: Box-Behnken, centre_runs: 2", new PlanRequest.BoxBehnken(2) },
        { "kind: definitive screening", new PlanRequest.DefinitiveScreening() },
        { "kind: D-optimal, runs: 20", new PlanRequest.Optimal(OptimalCriterion.D, SurfaceModel.Quadratic, 20, 1, 5) },
        { "kind: I-optimal, runs: 12, model: interactions, seed: 7",
            new PlanRequest.Optimal(OptimalCriterion.I, SurfaceModel.Interactions, 12, 7, 5) },
        { "kind: D-optimal, runs: 20, levels: as made, within: limits",
            new PlanRequest.Optimal(OptimalCriterion.D, SurfaceModel.Quadratic, 20, 1, null) },
        { "kind: Latin hypercube, runs: 20, seed: 3", new PlanRequest.Filling(FillingKind.LatinHypercube, 20, 3) },
        { "kind: Sobol sequence, runs: 16", new PlanRequest.Filling(FillingKind.Sobol, 16, 1) },
        { "kind: Halton sequence, runs: 16", new PlanRequest.Filling(FillingKind.Halton, 16, 1) },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_kind_of_plan_is_read_with_what_it_leaves_out(string plan, PlanRequest expected)
    {
        Assert.Equal(expected, WorkedStudyText.Right(With(plan)).Plan!.Request);
    }

    [Fact]
    public void Generators_are_read_as_they_are_written()
    {
        var read = Assert.IsType<PlanRequest.FractionWithGenerators>(
            WorkedStudyText.Right(With("kind: fractional factorial, generators: [D=-ABC]")).Plan!.Request);
        Assert.Equal(["D=-ABC"], read.Generators);
    }

    [Fact]
    public void The_objectives_are_analysed_unless_responses_are_named()
    {
        var study = WorkedStudyText.Right(With("kind: Box-Behnken"));
        Assert.Equal(study.Objectives.Select(objective => objective.Response), study.Plan!.Responses);
        var named = WorkedStudyText.Right(With("kind: Box-Behnken, responses: [\"residual[climb]\", pitch_swing]"));
        Assert.Equal([new Response.OfPhase(PhaseQuantity.Residual, 1, "climb"), new Response.OfMission(MissionQuantity.PitchSwing)],
            named.Plan!.Responses);
    }

    [Theory]
    [InlineData("kind: full factorial, runs: 8", "takes no runs")]
    [InlineData("kind: fractional factorial, most_runs: 8, levels: 2", "takes no levels")]
    [InlineData("kind: Plackett-Burman, axial: rotatable", "takes no axial")]
    [InlineData("kind: central composite, model: linear", "takes no model")]
    [InlineData("kind: Box-Behnken, most_runs: 8", "takes no most_runs")]
    [InlineData("kind: definitive screening, levels: 3", "takes no levels")]
    [InlineData("kind: Latin hypercube, runs: 8, centre_runs: 1", "takes no centre_runs")]
    [InlineData("kind: central composite, within: limits", "takes no within")]
    [InlineData("kind: D-optimal, runs: 20, generators: [D=ABC]", "takes no generators")]
    [InlineData("kind: Box Behnken", "Did you mean `Box-Behnken`?")]
    [InlineData("kind: fractional factorial", "either generators or most_runs")]
    [InlineData("kind: fractional factorial, most_runs: 8, generators: [D=ABC]", "either generators or most_runs")]
    [InlineData("kind: I-optimal", "runs is missing")]
    [InlineData("kind: Box-Behnken, responses: []", "is empty")]
    [InlineData("kind: Box-Behnken, responses: [pitch_swing, pitch_swing]", "is listed twice")]
    [InlineData("kind: central composite, centre_runs: 1.5", "whole number")]
    // The plan does not exist: docs/plans.md, tables of sizes.
    [InlineData("kind: fractional factorial, most_runs: 4", "cannot be made: the number of runs for 4 factors must be 5 or more, but is 4")]
    [InlineData("kind: fractional factorial, most_runs: 6", "cannot be made: 4 factors need 8 runs")]
    [InlineData("kind: Box-Behnken, centre_runs: 0", "cannot be made: the number of centre runs of a Box-Behnken plan must be 1 or more")]
    [InlineData("kind: fractional factorial, generators: [D=XYZ]", "cannot be made: \"X\"")]
    [InlineData("kind: Plackett-Burman, runs: 10", "has 8, 12, 16, 20, 24 runs, not 10")]
    [InlineData("kind: D-optimal, runs: 10", "cannot be made")]
    public void A_slip_in_the_plan_is_one_mistake_in_its_line(string plan, string words)
    {
        var diagnostic = WorkedStudyText.OneDiagnostic(With(plan));
        Assert.Contains(words, diagnostic.Text);
        Assert.Equal(planLine, diagnostic.Line);
        Assert.NotEmpty(diagnostic.Fix);
    }

    [Fact]
    public void A_plan_for_more_factors_than_are_swept_says_how_many_it_takes()
    {
        var fixedFactors = With("kind: Box-Behnken")
            .Replace("{ from: 380 mm, to: 480 mm, step: 5 mm }", "440 mm")
            .Replace("{ from: 100 mm, to: 400 mm, step: 10 mm }", "200 mm");
        Assert.Contains("3 to 7 factors, not 2", WorkedStudyText.OneDiagnostic(fixedFactors).Text);
    }

    /// <summary>docs/plans.md promises no plan that a study cannot ask for.</summary>
    [Fact]
    public void Every_row_of_the_docs_can_be_asked_for()
    {
        var rows = File.ReadAllLines(Path.Combine(Repository.Root, "docs", "plans.md"))
            .SkipWhile(line => !line.StartsWith("| Plan, `kind:`"))
            .Skip(2).TakeWhile(line => line.StartsWith('|')).Select(line => line.Split('|')[1]).ToList();
        Assert.Equal(11, rows.Count);
        var kinds = rows.SelectMany(row => Regex.Matches(row, "`([^`]+)`").Select(match => match.Groups[1].Value))
            .Where(word => word is not ("generators" or "most_runs" or "made"));
        Assert.All(kinds, kind => Assert.NotNull(WorkedStudyText.Right(With($"kind: {kind}" + kind switch
        {
            "fractional factorial" => ", most_runs: 8",
            "D-optimal" or "I-optimal" or "Latin hypercube" or "Sobol sequence" or "Halton sequence" => ", runs: 16",
            _ => "",
        })).Plan));
    }

    private static string With(string plan) => $"{WorkedStudyText.Text}plan: {{ {plan} }}\n";
}
