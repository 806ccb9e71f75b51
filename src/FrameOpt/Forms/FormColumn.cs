using FrameOpt.StudyFile.Values;

namespace FrameOpt.Forms;

/// <summary>A column of a form.</summary>
/// <param name="Title">In the header, before the unit in brackets.</param>
/// <param name="Unit">In the header, and of a number typed without one; empty for a column of words.</param>
/// <param name="Dimension">Of its numbers; null for words.</param>
/// <param name="IsSetting">True for what the form says, false for what the builder fills in.</param>
internal sealed record FormColumn(string Title, string Unit, Dimension? Dimension, bool IsSetting)
{
    /// <summary>Words that may stand there; empty for any.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>As on the form.</summary>
    public string Header => Unit.Length == 0 ? Title : $"{Title} [{Unit}]";

    public static FormColumn Set(string title, string unit, Dimension dimension) => new(title, unit, dimension, true);

    public static FormColumn SetWord(string title, params string[] words) => new(title, "", null, true) { Words = words };

    public static FormColumn Read(string title, string unit, Dimension dimension) => new(title, unit, dimension, false);

    public static FormColumn ReadWord(string title, params string[] words) => new(title, "", null, false) { Words = words };
}

/// <summary>The sheets of a form: one for each kind of run.</summary>
/// <param name="Name">Of the sheet.</param>
/// <param name="Letter">With which the names of its runs begin.</param>
/// <param name="Columns">The name of the run and its block first.</param>
internal sealed record FormTable(string Name, char Letter, IReadOnlyList<FormColumn> Columns)
{
    public const string Run = "run";
    public const string Block = "block";
    public const string Offset = "lateral offset";
    public const string RpmToSet = "rpm to set";
    public const string RpmRead = "rpm read";
    public const string Thrust = "thrust";
    public const string Torque = "torque at the propeller";
    public const string Power = "power at the propeller";
    public const string Temperature = "air temperature";
    public const string Altitude = "altitude";
    public const string Straps = "straps";
    public const string AsMarked = "as marked";
    public const string ChangedOver = "changed over";
    public const string LeftScale = "left scale";
    public const string RightScale = "right scale";
    public const string Pull = "pull at the hub";
    public const string Angle = "angle";
    public const string AngleWay = "leans";
    public const string Engine = "engine";
    public const string Off = "off";
    public const string SpeedSystem = "speed system";
    public const string Lead = "lead";
    public const string LeadSide = "lead hangs";
    public const string Airspeed = "airspeed";
    public const string Climb = "climb or sink";
    public const string ClimbWay = "up or down";
    public const string PilotMass = "pilot mass";
    public const string Lean = "lean to fly straight";
    public const string LeanSide = "leans to";
    public const string TurnSide = "turns to";
    public const string TurnTime = "time for one full turn";
    public const string BarTilt = "bar tilt";
    public const string LowSide = "lower side of the bar";
    public const string Remarks = "remarks";

    private static readonly FormColumn[] first = [FormColumn.SetWord(Run), FormColumn.SetWord(Block)];
    private static readonly FormColumn offset = FormColumn.SetWord(Offset);
    private static readonly FormColumn[] last = [FormColumn.ReadWord(Remarks)];

    /// <summary>Static runs of engine and propeller.</summary>
    public static FormTable Bench(string rpm) => new("Static bench", 'B',
    [
        .. first, FormColumn.Set($"{rpm} {RpmToSet}", "rpm", Dimension.Revolutions),
        FormColumn.Read($"{rpm} {RpmRead}", "rpm", Dimension.Revolutions), FormColumn.Read(Thrust, "kgf", Dimension.Force),
        FormColumn.Read(Torque, "N·m", Dimension.Torque), FormColumn.Read(Power, "kW", Dimension.Power),
        FormColumn.Read(Temperature, "°C", Dimension.TemperatureDifference), FormColumn.Read(Altitude, "m", Dimension.Length), .. last,
    ]);

    /// <summary>Two scales.</summary>
    public static readonly FormTable Hang = new("Hang check", 'H',
    [
        .. first, offset, FormColumn.SetWord(Straps, AsMarked, ChangedOver), FormColumn.Read(LeftScale, "kgf", Dimension.Force),
        FormColumn.Read(RightScale, "kgf", Dimension.Force), .. last,
    ]);

    /// <summary>A photo from the side.</summary>
    public static readonly FormTable HangAngle = new("Hang angle", 'A',
    [
        .. first, offset, FormColumn.Set(Pull, "kgf", Dimension.Force), FormColumn.Read(Angle, "deg", Dimension.Angle),
        FormColumn.ReadWord(AngleWay, "back", "forward"), .. last,
    ]);

    /// <summary>Steady stretches of flight.</summary>
    public static FormTable Flight(string rpm) => new("Flight", 'F',
    [
        .. first, offset, FormColumn.SetWord(Engine), FormColumn.Set(SpeedSystem, "%", Dimension.Share),
        FormColumn.Set(Lead, "kg", Dimension.Mass), FormColumn.SetWord(LeadSide, "none", "left", "right"),
        FormColumn.Read($"{rpm} {RpmRead}", "rpm", Dimension.Revolutions), FormColumn.Read(Airspeed, "km/h", Dimension.Speed),
        FormColumn.Read(Altitude, "m", Dimension.Length), FormColumn.Read(Climb, "m/s", Dimension.Speed),
        FormColumn.ReadWord(ClimbWay, "up", "down"), FormColumn.Read(PilotMass, "kg", Dimension.Mass),
        FormColumn.Read(Lean, "mm", Dimension.Length), FormColumn.ReadWord(LeanSide, "left", "right"),
        FormColumn.ReadWord(TurnSide, "left", "right", "straight"), FormColumn.Read(TurnTime, "s", Dimension.Time),
        FormColumn.Read(BarTilt, "deg", Dimension.Angle), FormColumn.ReadWord(LowSide, "left", "right"), .. last,
    ]);

    /// <summary>The sheets for a machine: its rpm are those of the engine where one is described.</summary>
    public static IReadOnlyList<FormTable> Of(Model.Machine machine)
    {
        var rpm = machine.Engine is null ? "propeller" : "engine";
        return [Bench(rpm), Hang, HangAngle, Flight(rpm)];
    }
}
