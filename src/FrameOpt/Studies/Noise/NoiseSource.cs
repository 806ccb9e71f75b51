using FrameOpt.Model;

namespace FrameOpt.Studies.Noise;

#pragma warning disable CS1591 // each row says in its own words what it is
/// <summary>A number that is never exactly what the study says: the rows of the catalogue, each with its usual spread.</summary>
public sealed class NoiseSource
{
    private const string Practice = "common practice, no source";
    private static readonly (string More, string Less) sides = ("to the right", "to the left");
    private static readonly (string More, string Less) amount = ("more", "less");
    private static readonly (string More, string Less) mass = ("heavier", "lighter");
    private static readonly List<NoiseSource> rows = [];

    public static readonly NoiseSource SeatRight = new(
        "seat_right", "the pilot's seat, sideways", NoiseUnit.Length, sides,
        "the pilot sits to one side, to the right +", new Spread.Normal(0.010), Practice,
        (state, d) => state.With(item => item.IsBody, item => Moved(item, 0, d)));
    public static readonly NoiseSource SeatForward = new(
        "seat_forward", "the pilot's seat, forward and back", NoiseUnit.Length, ("forward", "back"),
        "the pilot sits further forward +", new Spread.Normal(0.015), Practice,
        (state, d) => state.With(item => item.IsBody, item => Moved(item, d, 0)));
    public static readonly NoiseSource FrameRight = new(
        "frame_right", "the frame's centre of gravity", NoiseUnit.Length, sides,
        "centre of gravity of frame, engine and fuel, to the right +", new Spread.Normal(0.005), Practice,
        (state, d) => state.With(item => !item.IsBody, item => Moved(item, 0, d)));

    public static readonly NoiseSource PilotMass = new(
        "pilot_mass", "the pilot's mass", NoiseUnit.Share, mass,
        "mass of the pilot's body", new Spread.Normal(0.03), Practice,
        (state, d) => state.With(item => item.IsBody, item => Heavier(item, d)));

    public static readonly NoiseSource LoadMass = new(
        "load_mass", "mass of frame, fuel and clothing", NoiseUnit.Share, mass,
        "mass of frame, fuel and clothing", new Spread.Normal(0.05), Practice,
        (state, d) => state.With(item => !item.IsBody, item => Heavier(item, d)));

    public static readonly NoiseSource SpacingBuilt = Build(
        "spacing_built", "hang-point spacing, as drilled", GeometryInput.HangPointSpacing, ("wider", "narrower"),
        "hang-point spacing as drilled", BuildTolerance.LengthMetres);

    public static readonly NoiseSource OffsetBuilt = Build(
        "offset_built", "lateral offset, as drilled", GeometryInput.LateralOffset, sides,
        "lateral offset as drilled, to the right +", BuildTolerance.LengthMetres);

    public static readonly NoiseSource HeightBuilt = Build(
        "height_built", "suspension height, as welded", GeometryInput.SuspensionHeight, ("higher", "lower"),
        "suspension height as welded", 2 * BuildTolerance.LengthMetres);

    public static readonly NoiseSource AngleBuilt = Build(
        "angle_built", "thrust-line angle, as mounted", GeometryInput.ThrustLineAngle, sides,
        "thrust-line angle as mounted, to the right +", BuildTolerance.AngleRadians);

    public static readonly NoiseSource TiltBuilt = Build(
        "tilt_built", "thrust-line tilt, as mounted", GeometryInput.ThrustLineTilt, ("upward", "downward"),
        "thrust-line tilt as mounted, upward +", BuildTolerance.AngleRadians);

    public static readonly NoiseSource HubRightBuilt = Build(
        "hub_right_built", "propeller hub, sideways", GeometryInput.HubRight, sides,
        "propeller hub to the right +", 2 * BuildTolerance.LengthMetres);

    public static readonly NoiseSource HubUpBuilt = Build(
        "hub_up_built", "propeller hub, up and down", GeometryInput.HubUp, ("up", "down"),
        "propeller hub up +", 3 * BuildTolerance.LengthMetres);

    public static readonly NoiseSource HubForwardBuilt = Build(
        "hub_forward_built", "propeller hub, forward and back", GeometryInput.HubForward, ("forward", "back"),
        "propeller hub forward +", 3 * BuildTolerance.LengthMetres);

    public static readonly NoiseSource HangHeightsBuilt = Build(
        "hang_heights_built", "unequal heights of the hang points", GeometryInput.HangHeightDifference,
        ("higher on the right", "higher on the left"),
        "right hang point higher than the left +", BuildTolerance.LengthMetres);

    public static readonly NoiseSource Straps = Build(
        "straps", "unequal lengths of the straps", GeometryInput.StrapDifference, ("longer on the right", "longer on the left"),
        "right strap or carabiner longer than the left +", 2 * BuildTolerance.LengthMetres);

    public static readonly NoiseSource BladePull = new(
        "blade_pull", "pull of the down-going blade", NoiseUnit.Length, sides,
        "centre of thrust beside the hub, from the pull of the down-going blade, to the right +",
        new Spread.Normal(0.005), "a few N·m in oblique flow (docs/model.md, limits), own estimate",
        (state, d) => state.Built(GeometryInput.HubRight, d))
    { IsOfFrame = true };

    public static readonly NoiseSource PropellerThrust = new(
        "propeller_thrust", "thrust of the propeller", NoiseUnit.Share, amount, "thrust coefficient", new Spread.Normal(0.03),
        "repeatability of bench runs, common practice, no source", (state, d) => state.Propeller(1 + d, 1));

    public static readonly NoiseSource PropellerTorque = new(
        "propeller_torque", "torque of the propeller", NoiseUnit.Share, amount,
        "power coefficient, and with it the torque", new Spread.Normal(0.05),
        "repeatability of bench runs, common practice, no source", (state, d) => state.Propeller(1, 1 + d));

    public static readonly NoiseSource YawLeverageOfWing = new(
        "yaw_leverage", "yaw leverage of the wing", NoiseUnit.Range, ("towards high", "towards low"),
        "from low (-1) over the study's (0) to high (+1)", new Spread.Triangle(-1, 0, 1),
        "range of the model (docs/model.md), assumption",
        (state, d) => state with { Wing = state.Wing with { YawLeverage = state.Wing.YawLeverage.Towards(d) } });

    public static readonly NoiseSource RiserCouplingOfWing = new(
        "riser_coupling", "riser coupling", NoiseUnit.Range, ("towards stiff", "towards soft"),
        "from soft (-1) over the study's (0) to stiff (+1), in equal ratios",
        new Spread.Triangle(-1, 0, 1), "range of the model (docs/model.md), assumption", Coupling);

    public static readonly NoiseSource GlideRatio = new(
        "glide_ratio", "glide ratio of the wing", NoiseUnit.Share, ("better", "worse"),
        "glide ratio at every speed", new Spread.Normal(0.05), Practice,
        (state, d) => state with { Wing = state.Wing with { Polar = state.Wing.Polar.WithGlide(1 + d) } });

    public static readonly NoiseSource DragArea = new(
        "drag_area", "drag area of pilot and frame", NoiseUnit.Share, amount,
        "drag area of pilot and frame", new Spread.Normal(0.15), Practice,
        (state, d) => state with
        {
            Machine = state.Machine with
            {
                Pilot = state.Machine.Pilot with { DragAreaSquareMetres = state.Machine.Pilot.DragAreaSquareMetres * (1 + d) },
            },
        });

    public static readonly NoiseSource AirTemperature = new(
        "air_temperature", "air temperature", NoiseUnit.Temperature, ("warmer", "colder"),
        "temperature, and with it the density, at every altitude", new Spread.Normal(8),
        "a temperate climate over the flying season, common practice, no source",
        (state, d) => state with
        {
            Mission = [.. state.Mission.Select(phase => phase with { TemperatureOffsetKelvin = phase.TemperatureOffsetKelvin + d })],
        });

    private readonly Func<NoiseCase, double, NoiseCase> change;

    /// <summary>A row; one that is not usual counts as exact until a study gives it a spread.</summary>
    internal NoiseSource(
        string name, string title, NoiseUnit unit, (string More, string Less) ways, string meaning, Spread usual, string source,
        Func<NoiseCase, double, NoiseCase> change, bool isUsual = true)
    {
        (Name, Title, Unit, Meaning, Usual, Source, this.change) = (name, title, unit, meaning, usual, source, change);
        (More, Less) = ways;
        if (isUsual)
            rows.Add(this);
    }

    /// <summary>Those that are uncertain in a study that says nothing of them, in the order of the table in docs/noise.md.</summary>
    public static IReadOnlyList<NoiseSource> All => rows;

    /// <summary>True when it changes how the frame is built, and nothing of machine, wing or mission.</summary>
    public bool IsOfFrame { get; private init; }

    /// <summary>As a study file writes it.</summary>
    public string Name { get; }

    /// <summary>As people say it: what to measure.</summary>
    public string Title { get; }

    /// <summary>Which way a deviation above 0 goes, in words.</summary>
    public string More { get; }

    /// <summary>Which way a deviation below 0 goes, in words.</summary>
    public string Less { get; }

    /// <summary>What its deviation is measured in.</summary>
    public NoiseUnit Unit { get; }

    /// <summary>In words.</summary>
    public string Meaning { get; }

    /// <summary>The spread taken when a study gives none.</summary>
    public Spread Usual { get; }

    /// <summary>Where that comes from.</summary>
    public string Source { get; }

    /// <summary>A case with this number off by a deviation.</summary>
    public NoiseCase Apply(NoiseCase state, double deviation) => deviation == 0 ? state : change(state, deviation);

    /// <inheritdoc/>
    public override string ToString() => Name;

    private static NoiseSource Build(
        string name, string title, GeometryInput input, (string More, string Less) ways, string meaning, double standardDeviation) => new(
            name, title, input.Kind == InputKind.Angle ? NoiseUnit.Angle : NoiseUnit.Length, ways, meaning,
            new Spread.Normal(standardDeviation), Practice, (state, d) => state.Built(input, d))
        { IsOfFrame = true };

    private static MassItem Moved(MassItem item, double forward, double right) => item with
    {
        At = item.At with { ForwardMetres = item.At.ForwardMetres + forward, RightMetres = item.At.RightMetres + right },
    };

    private static MassItem Heavier(MassItem item, double share) => item with { MassKilograms = item.MassKilograms * (1 + share) };

    private static NoiseCase Coupling(NoiseCase state, double towards)
    {
        var end = towards < 0 ? RiserCoupling.Soft : RiserCoupling.Stiff;
        var between = new RiserCoupling.Between(state.Wing.RiserCoupling, end.LengthMetres, Math.Abs(towards));
        return state with { Wing = state.Wing with { RiserCoupling = between } };
    }
}
#pragma warning restore CS1591
