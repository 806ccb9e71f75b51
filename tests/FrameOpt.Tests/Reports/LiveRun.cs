using FrameOpt.Analysis;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.Tests.Model;
using FrameOpt.Tests.Running;
using FrameOpt.Tests.StudyFile;

namespace FrameOpt.Tests.Reports;

/// <summary>A run of the tool on a small grid of the worked machine, its front below 500 designs so that the workbook holds it
/// whole.</summary>
public static class LiveRun
{
    private static readonly Lazy<RunReport> report = new(() => Of(RankingMethod.DistanceToIdeal));

    public static RunReport Report => report.Value;

    public static RunReport Of(RankingMethod method)
    {
        var study = WorkedStudy.Over(
            WorkedStudy.Steps(400, 10, 9),
            WorkedStudy.Steps(0, 5, 13),
            WorkedStudy.Steps(100, 25, 13),
            [-3, -1.5, 0, 1.5, 3],
            null,
            new StudyLimit(new Response.OfMission(MissionQuantity.TwistMarginWorst), false, 3, null),
            new StudyLimit(new Response.OfMission(MissionQuantity.EffortWorst), false, null, 0.9));
        study = study with { Ranking = new RankingSetting(method, [3, 1, 1]), Baseline = WorkedMachine.Geometry(440, 0, 150, 0) };
        var runner = new StudyRunner(study, 1);
        foreach (var _ in runner.Steps())
        {
        }

        return RunReport.Of(runner.Result(), ReportFixture.Info);
    }
}
