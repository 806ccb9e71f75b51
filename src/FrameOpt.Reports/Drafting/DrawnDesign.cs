using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Drafting;

/// <summary>One frame to be drawn, with what the sheets say about it.</summary>
/// <param name="Report">The run it comes from.</param>
/// <param name="Geometry">The frame.</param>
internal sealed record DrawnDesign(RunReport Report, FrameGeometry Geometry)
{
    /// <summary>Every hole of the bar; null where the study knows none.</summary>
    public HolePattern? Holes { get; init; } = Report.Result.Study.Holes;

    /// <summary>The best compromise of a run; null when it has none, for then there is nothing to drill.</summary>
    public static DrawnDesign? Of(RunReport report) => report.Result.Chosen is { } chosen ? new DrawnDesign(report, chosen.Geometry) : null;

    public Study Study => Report.Result.Study;

    public Machine Machine => Study.Machine;

    /// <summary>The two hang points, the left one first: metres to the right of the plane of symmetry, and above the datum.</summary>
    public IReadOnlyList<HangPoint> HangPoints =>
    [
        new("LEFT", -1, -DrillingDimensions.LeftMetres(Geometry), Geometry.LeftHeightMetres),
        new("RIGHT", 1, DrillingDimensions.RightMetres(Geometry), Geometry.RightHeightMetres),
    ];

    /// <summary>The holes of the bar that are not the hang points, to the right of the plane of symmetry, m. Where the study does not say
    /// which are drilled, all of them are taken to be.</summary>
    public IReadOnlyList<(double RightMetres, double UpMetres, bool IsDrilled)> OtherHoles => Holes is null ? [] :
    [
        .. HangPoints.SelectMany(point => Row(point).Places.Index().Where(hole => hole.Index != IndexOf(point)).Select(hole =>
            (point.Side * hole.Item, point.UpMetres, Row(point).Drilled is null || Row(point).IsDrilled(hole.Index)))),
    ];

    /// <summary>True when the hole of a hang point is there already, false when it is new; null when the study says neither.</summary>
    public bool? IsDrilled(HangPoint point) => Holes is null || Row(point).Drilled is null ? null
        : IndexOf(point) is { } hole && Row(point).IsDrilled(hole);

    private HoleRow Row(HangPoint point) => point.Side < 0 ? Holes!.Left : Holes!.Right;

    private int? IndexOf(HangPoint point) => Row(point).IndexOf(point.Side * point.RightMetres);

    /// <summary>"The propeller turns clockwise ...: its reaction pushes the left side down."</summary>
    public string RotationLine => $"propeller turns {StudyText.RotationText(Machine.Propeller.Rotation)} seen from behind; "
        + $"reaction: {(Machine.Propeller.Rotation == Rotation.Clockwise ? "left" : "right")} side down";

    /// <summary>Which way the frame would pull with its hang points in the middle.</summary>
    public string PullLine { get; } = Pull(Report.Result, Geometry);

    /// <summary>"study 0123456789abcdef, FrameOpt 0.1.0".</summary>
    public string Origin => $"study {Study.Hash[..16]}, FrameOpt {Report.Info.ToolVersion.Split('+')[0]}";

    /// <summary>"rank 1 of 24 on the front", or that there is one frame.</summary>
    public string Place => Study.IsOneFrame ? "one frame, as given"
        : $"best compromise of {NumberFormat.Count(Report.Result.Front.Count, "design")} on the front";

    /// <summary>Of the mark of a hole in a view, mm: smaller where the holes of the bar stand close.</summary>
    /// <param name="scale">mm on the sheet for a metre.</param>
    public double HoleRadius(double scale)
    {
        var places = HangPoints.Select(point => point.RightMetres).Concat(OtherHoles.Select(hole => hole.RightMetres)).Order().ToList();
        return Math.Clamp(0.4 * scale * places.Zip(places.Skip(1), (a, b) => b - a).Min(), 0.3, 1.2);
    }

    private static string Pull(StudyResult result, FrameGeometry geometry)
    {
        var middle = result.Mission.Evaluate(geometry with { OffsetMetres = 0 });
        if (middle.Failure is not null)
            return "without offset it cannot fly the mission";
        var phase = middle.Phases[result.Study.HeaviestSettledPhase];
        var steers = PhaseResult.SteersWith(phase[PhaseQuantity.Residual]);
        return steers == "straight" ? $"without offset it hardly pulls in {TextTruncation.Truncate(phase.Phase.Name, 20)}"
            : $"pulls {steers} without offset ({TextTruncation.Truncate(phase.Phase.Name, 20)})";
    }
}

/// <summary>Where a riser hangs.</summary>
/// <param name="Name">LEFT or RIGHT.</param>
/// <param name="Side">-1 on the pilot's left, +1 on the right.</param>
/// <param name="RightMetres">To the right of the plane of symmetry.</param>
/// <param name="UpMetres">Above the datum.</param>
internal sealed record HangPoint(string Name, int Side, double RightMetres, double UpMetres)
{
    /// <summary>"207 mm to the left".</summary>
    public string Distance => $"{Sheet.Length(RightMetres)} to the {SideText.Side(RightMetres)}";
}
