using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Running;
using FrameOpt.Search.Fronts;
using FrameOpt.Search.Stopping;
using FrameOpt.Studies;
using FrameOpt.Tests.Model;

namespace FrameOpt.Tests.Reports;

/// <summary>A run put together by hand on the machine of the worked balance: real physics, invented ranks, counts, scores and
/// reasons.</summary>
public static class ReportFixture
{
    private const double Degree = Math.PI / 180;
    private static readonly DisplayUnit millimetres = new("mm", 0.001);
    private static readonly DisplayUnit degrees = new("deg", Degree);

    public static RunInfo Info { get; } = new("study.yaml", "0.1.0", 0);

    public static RunTimings Timings { get; } = new(new DateTime(2030, 1, 2, 3, 4, 5, DateTimeKind.Utc), 2, 0.25, 0.125, 0, "a machine");

    public static FrameGeometry WorkedGeometry { get; } = WorkedMachine.Geometry(440, 25, 150, 0);

    public static FrameGeometry Baseline { get; } = WorkedMachine.Geometry(440, 0, 150, 0);

    /// <summary>The study, with any text in the places where users write their own.</summary>
    public static Study Study(string title = "One frame for one engine", string? cruise = null, string? pilot = null)
    {
        IReadOnlyList<Phase> phases = [.. WorkedMachine.Phases.Select(
            phase => phase.Name == "cruise" ? phase with { Name = cruise ?? phase.Name } : phase)];
        var masses = WorkedMachine.Machine.Masses.Select(item => item.Name == "pilot" ? item with { Name = pilot ?? item.Name } : item);
        return new Study(
            title,
            "Which geometry leaves the least torque to hold?",
            WorkedMachine.Machine with { Masses = [.. masses] },
            WorkedMachine.Wing,
            phases,
            [
                new(GeometryInput.HangPointSpacing, Levels(380, 480, 5, 0.001), millimetres),
                new(GeometryInput.LateralOffset, Levels(0, 60, 1, 0.001), millimetres),
                new(GeometryInput.SuspensionHeight, Levels(100, 400, 10, 0.001), millimetres),
                new(GeometryInput.ThrustLineAngle, Levels(-3, 3, 1.5, Degree), degrees),
            ],
            [
                new(new Response.OfMission(MissionQuantity.ResidualRms), Maximise: false, Magnitude: false, Resolution: 0),
                new(new Response.OfPhase(PhaseQuantity.WeightShiftAuthority, 2, phases[2].Name), Maximise: true, Magnitude: false,
                    Resolution: 0),
                new(new Response.OfPhase(PhaseQuantity.Residual, 2, phases[2].Name), Maximise: false, Magnitude: true, Resolution: 0.1),
            ],
            [
                new(new Response.OfMission(MissionQuantity.TwistMarginWorst), Magnitude: false, AtLeast: 3, AtMost: null),
                new(new Response.OfMission(MissionQuantity.EffortWorst), Magnitude: false, AtLeast: null, AtMost: 0.455),
            ],
            new RankingSetting(RankingMethod.DistanceToIdeal, [3, 1, 1]),
            Baseline,
            Strength: null,
            new BandSetting(2, 5),
            [new Assumption("Twist limit", "1.38", "assumption, range 1 to 2")],
            ["line 12: the hub lies far behind the datum"],
            "0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef");
    }

    /// <summary>A run whose front holds so many designs; the first is <see cref="WorkedGeometry"/>.</summary>
    public static RunReport Report(int designs = 12, Study? study = null)
    {
        study ??= Study();
        var model = Model(study);
        FrameGeometry[] geometries = [WorkedGeometry, .. Enumerable.Range(1, designs - 1)
            .Select(i => WorkedMachine.Geometry(420 + 5 * (i % 9), 10 + i % 30, 150 + 10 * (i / 30 % 20), 1.5 * (i % 3 - 1)))];
        var evaluations = geometries.Select(model.Evaluate).ToList();
        var front = evaluations.Select((evaluation, i) => Design(study, evaluation, i)).ToList();
        var result = new StudyResult(
            study,
            model,
            front,
            ["pitch_swing"],
            new RunCounts(198_555, 1_200, 90_000, 107_355, [new(new FlightFailure(FailureKind.RiserTwist, 0), 1_200)], [70_000, 45_000]),
            new StopReason.GridComplete(),
            evaluations[0],
            model.Evaluate(Baseline),
            [.. WingCases.All.Select(wingCase => Scenario(wingCase, model, wingCase < WingCase.HighLeverage ? front[0] : front[^1]))],
            [new BalancedBand(1480, 1720)],
            NearestMiss: null)
        {
            Margins = BuildMargins.Of(model, study, evaluations[0]),
        };
        return new RunReport(result, Info, evaluations);
    }

    /// <summary>A design that cannot fly in one phase.</summary>
    public static DesignEvaluation Failing(FrameGeometry geometry, FailureKind kind, int phase) => new(
        geometry, [], [],
        new DesignFailure(new FlightFailure(kind, phase), Model(Study()), geometry, default, default, default, default));

    /// <summary>The same run with nothing feasible.</summary>
    public static StudyResult NothingFeasible(NearestMiss? miss)
    {
        var result = Report(1).Result;
        return result with { Front = [], Chosen = null, Scenarios = [], Bands = [], NearestMiss = miss };
    }

    /// <summary>A design with one quantity of one phase made up.</summary>
    public static DesignEvaluation With(this DesignEvaluation design, int phaseIndex, PhaseQuantity quantity, double value)
    {
        var phases = design.Phases.ToArray();
        var values = phases[phaseIndex].Values.ToArray();
        values[quantity.Index] = value;
        phases[phaseIndex] = phases[phaseIndex] with { Values = values };
        return design with { Phases = phases };
    }

    private static MissionModel Model(Study study) => new(study.Machine, study.Wing, study.Mission, ResponseReferences.None);

    private static FrontDesign Design(Study study, DesignEvaluation evaluation, int index) => new(
        index + 1,
        1_000 + index,
        evaluation.Geometry,
        [.. study.Objectives.Select(objective => objective.Magnitude ? Math.Abs(evaluation[objective.Response])
            : evaluation[objective.Response])],
        0.1 + 0.001 * index,
        IsKnee: index == 1);

    private static WingScenario Scenario(WingCase wingCase, MissionModel given, FrontDesign best)
    {
        var model = given.With(wingCase.Of(given.Wing));
        return new WingScenario(wingCase, model.Evaluate(WorkedGeometry), best, model.Evaluate(best.Geometry));
    }

    private static double[] Levels(double from, double to, double step, double siPerUnit) =>
        [.. Enumerable.Range(0, (int)Math.Round((to - from) / step) + 1).Select(i => (from + i * step) * siPerUnit)];
}
