using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Page;

/// <summary>A design of the front in the cells of a table.</summary>
internal static class DesignRow
{
    public static IReadOnlyList<string> Headers(Study study) =>
    [
        "rank", .. study.Factors.Select(factor => factor.Name.Replace('_', ' ')),
            .. study.Objectives.Select(objective => StudyText.Name(objective.Response, objective.Magnitude).Replace('_', ' ')),
    ];

    /// <summary>Rank in the run, every factor, every objective, with units.</summary>
    public static IReadOnlyList<string> Of(DesignView view) =>
    [
        FormattableString.Invariant($"{view.FrontDesign!.Rank}"),
        .. Geometry(view),
        .. view.Result.Study.Objectives.Select((objective, o) => NumberFormat.Text(
            view.FrontDesign.Objectives[o], objective.Response.Entry)),
    ];

    /// <summary>In one short line.</summary>
    public static string Label(DesignView view) =>
        $"{(view.FrontDesign is null ? view.Name : FormattableString.Invariant($"rank {view.FrontDesign.Rank}"))}: {string.Join(", ", Geometry(view))}";

    private static IEnumerable<string> Geometry(DesignView view) =>
        view.Result.Study.Factors.Select(factor => Cell(factor, view.Evaluation.Geometry[factor.Input]));

    private static string Cell(StudyFactor factor, double si) =>
        factor.Input.IsSided && si != 0
        ? $"{factor.Unit.Text(Math.Abs(si))} {SideText.Side(si)}"
        : factor.Unit.Text(si);
}
