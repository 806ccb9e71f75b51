namespace FrameOpt.Model;

/// <summary>A geometry input that a study may sweep: one row of the catalogue of factors, with all that is known of it.</summary>
public sealed class GeometryInput
{
    private static readonly List<GeometryInput> rows = [];

    /// <summary>Hang-point spacing s.</summary>
    public static readonly GeometryInput HangPointSpacing = new(
        "hang_point_spacing", InputKind.Length, EvaluationStage.Risers,
        (in g) => g.SpacingMetres, (in g, si) => g with { SpacingMetres = si })
    {
        IsPositive = true,
        ShortName = "spacing",
        Example = "440 mm",
        ExampleRange = "{ from: 380 mm, to: 480 mm, step: 5 mm }",
        Words = new("hang points {} apart", "hang points {} apart"),
    };

    /// <summary>Lateral offset e, to the pilot's right +.</summary>
    public static readonly GeometryInput LateralOffset = new(
        "lateral_offset", InputKind.Length, EvaluationStage.Offset,
        (in g) => g.OffsetMetres, (in g, si) => g with { OffsetMetres = si })
    {
        IsSided = true,
        Example = "25 mm",
        ExampleRange = "{ from: -50 mm, to: 50 mm, step: 1 mm }",
        Words = new("both moved {} to the pilot's right", "both moved {} to the pilot's left", "no offset"),
    };

    /// <summary>Suspension height, hang line above the datum +.</summary>
    public static readonly GeometryInput SuspensionHeight = new(
        "suspension_height", InputKind.Length, EvaluationStage.Height,
        (in g) => g.HeightMetres, (in g, si) => g with { HeightMetres = si })
    {
        ShortName = "height",
        Example = "230 mm",
        Words = new("hang line {} above the datum", "hang line {} below the datum"),
    };

    /// <summary>Thrust-line angle psi, to the pilot's right +.</summary>
    public static readonly GeometryInput ThrustLineAngle = new(
        "thrust_line_angle", InputKind.Angle, EvaluationStage.OperatingPoint,
        (in g) => g.AngleRadians, (in g, si) => g with { AngleRadians = si })
    {
        IsSided = true,
        ShortName = "thrust angle",
        Example = "1.5 deg",
        ExampleRange = "{ values: [-3 deg, 0 deg, 3 deg] }",
        Words = new("thrust line, looking forward, points {} to the pilot's right",
            "thrust line, looking forward, points {} to the pilot's left", "thrust line straight ahead"),
    };

    /// <summary>Thrust-line tilt tau, upward +.</summary>
    public static readonly GeometryInput ThrustLineTilt = new(
        "thrust_line_tilt", InputKind.Angle, EvaluationStage.OperatingPoint,
        (in g) => g.TiltRadians, (in g, si) => g with { TiltRadians = si }, machine => machine.Propeller.TiltRadians)
    {
        ShortName = "tilt",
        Example = "5 deg",
        Words = new("thrust line tilted {} upward", "thrust line tilted {} downward"),
    };

    /// <summary>Propeller hub, forward of the datum +.</summary>
    public static readonly GeometryInput HubForward = new(
        "hub_forward", InputKind.Length, EvaluationStage.Frame,
        (in g) => g.HubForwardMetres, (in g, si) => g with { HubForwardMetres = si }, machine => machine.Propeller.Hub.ForwardMetres)
    {
        Example = "-420 mm",
        Words = new("hub {} in front of the datum", "hub {} behind the datum"),
    };

    /// <summary>Propeller hub, right of the datum +.</summary>
    public static readonly GeometryInput HubRight = new(
        "hub_right", InputKind.Length, EvaluationStage.Frame,
        (in g) => g.HubRightMetres, (in g, si) => g with { HubRightMetres = si }, machine => machine.Propeller.Hub.RightMetres)
    {
        IsSided = true,
        Example = "10 mm",
        Words = new("hub {} to the right of the datum", "hub {} to the left of the datum"),
    };

    /// <summary>Propeller hub, above the datum +.</summary>
    public static readonly GeometryInput HubUp = new(
        "hub_up", InputKind.Length, EvaluationStage.Frame,
        (in g) => g.HubUpMetres, (in g, si) => g with { HubUpMetres = si }, machine => machine.Propeller.Hub.UpMetres)
    {
        Example = "120 mm",
        Words = new("hub {} above the datum", "hub {} below the datum"),
    };

    /// <summary>Hang points, forward of the datum +.</summary>
    public static readonly GeometryInput HangLineForward = new(
        "hang_line_forward", InputKind.Length, EvaluationStage.Frame,
        (in g) => g.HangLineForwardMetres, (in g, si) => g with { HangLineForwardMetres = si }, machine => machine.HangLineForwardMetres)
    {
        Example = "-60 mm",
        Words = new("hang line {} in front of the datum", "hang line {} behind the datum"),
    };

    /// <summary>How much higher the right hang point is than the left, +; their middle stays at the suspension height.</summary>
    public static readonly GeometryInput HangHeightDifference = new(
        "hang_height_difference", InputKind.Length, EvaluationStage.Risers,
        (in g) => g.HangHeightDifferenceMetres, (in g, si) => g with { HangHeightDifferenceMetres = si }, _ => 0)
    {
        IsSided = true,
        Example = "5 mm",
        ExampleRange = "{ from: -10 mm, to: 10 mm, step: 1 mm }",
        Words = new("right hang point {} higher than the left", "left hang point {} higher than the right",
            "hang points at equal height"),
        ChangeWords = new("{} higher on the right", "{} higher on the left"),
    };

    /// <summary>How much longer the strap or carabiner between hang point and riser is on the right than on the left, +.</summary>
    public static readonly GeometryInput StrapDifference = new(
        "strap_difference", InputKind.Length, EvaluationStage.Risers,
        (in g) => g.StrapDifferenceMetres, (in g, si) => g with { StrapDifferenceMetres = si }, _ => 0)
    {
        IsSided = true,
        Example = "5 mm",
        ExampleRange = "{ from: -10 mm, to: 10 mm, step: 1 mm }",
        Words = new("right strap {} longer than the left", "left strap {} longer than the right", "straps of equal length"),
        ChangeWords = new("{} longer on the right", "{} longer on the left"),
    };

    private readonly InputReader read;
    private readonly InputWriter write;
    private readonly Func<Machine, double>? asBuilt;

    private GeometryInput(
        string name, InputKind kind, EvaluationStage stage, InputReader read, InputWriter write, Func<Machine, double>? asBuilt = null)
    {
        (Name, Kind, Stage, Index) = (name, kind, stage, rows.Count);
        (this.read, this.write, this.asBuilt) = (read, write, asBuilt);
        ShortName = name.Replace('_', ' ');
        rows.Add(this);
    }

    /// <summary>As a study file writes it.</summary>
    public string Name { get; }

    /// <summary>Length or angle, with its bounds.</summary>
    public InputKind Kind { get; }

    /// <summary>The first stage of the model that a change affects.</summary>
    public EvaluationStage Stage { get; }

    /// <summary>Its place among all rows, from 0: the order of a study's factors.</summary>
    public int Index { get; }

    /// <summary>True when every study gives it; the machine as built gives the others.</summary>
    public bool IsRequired => asBuilt is null;

    /// <summary>True when only values above 0 make sense.</summary>
    public bool IsPositive { get; private init; }

    /// <summary>True when + is the pilot's right: a mirrored frame has the opposite value.</summary>
    public bool IsSided { get; private init; }

    /// <summary>In a word or two.</summary>
    public string ShortName { get; private init; }

    /// <summary>A likely value with its unit, which a study file accepts.</summary>
    public required string Example { get; init; }

    /// <summary>How a study sweeps it, for messages; null where that depends on the datum or the machine: no range suits all.</summary>
    public string? ExampleRange { get; private init; }

    /// <summary>How a value reads, whatever its sign.</summary>
    public required SignWords Words { get; init; }

    /// <summary>How a change of what compares the two sides reads; null for what moves to a side, or is more or less.</summary>
    public SignWords? ChangeWords { get; private init; }

    /// <summary>All rows, in order.</summary>
    internal static IReadOnlyList<GeometryInput> Rows => rows;

    /// <summary>Its value in a geometry, m or rad.</summary>
    public double Of(in FrameGeometry geometry) => read(geometry);

    /// <summary>A geometry with another value of it, m or rad.</summary>
    public FrameGeometry In(in FrameGeometry geometry, double si) => write(geometry, si);

    /// <summary>Its value in the machine as built, m or rad; 0 for what only a design says.</summary>
    public double AsBuilt(Machine machine) => asBuilt is null ? 0 : asBuilt(machine);

    /// <inheritdoc/>
    public override string ToString() => Name;

    private delegate double InputReader(in FrameGeometry geometry);

    private delegate FrameGeometry InputWriter(in FrameGeometry geometry, double si);
}
