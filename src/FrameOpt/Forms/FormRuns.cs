using FrameOpt.Fit;
using FrameOpt.Model;
using FrameOpt.Model.Propulsion;
using FrameOpt.Studies;

namespace FrameOpt.Forms;

/// <summary>Makes runs of the filled rows of a form.</summary>
/// <param name="study">Whose machine was measured.</param>
/// <param name="frame">As built.</param>
internal sealed class FormRuns(Study study, FrameGeometry frame)
{
    private const double MostMetres = 5000;
    private const double MostNewtons = 5000;
    private const double Degrees = Math.PI / 180;
    private readonly string rpm = study.Machine.Engine is null ? "propeller" : "engine";
    private readonly double reduction = study.Machine.Engine?.Reduction ?? 1;

    /// <summary>The run of a row, or null after an error.</summary>
    public MeasuredRun? Read(FormRow row, FormTable table, string name)
    {
        MeasuredRun? run = table.Letter switch
        {
            'B' => Bench(row, name),
            'H' => Hang(row, name),
            'A' => Angle(row, name),
            _ => Flight(row, name),
        };
        return run is null || run.Readings.Any(reading => double.IsNaN(reading.Value)) ? null : run;
    }

    private MeasuredRun.Bench? Bench(FormRow row, string name)
    {
        var speed = row.Required($"{rpm} {FormTable.RpmRead}", 30_000) / reduction;
        var (thrust, torque, power) = (row.Number(FormTable.Thrust, MostNewtons), row.Number(FormTable.Torque, 1000),
            row.Number(FormTable.Power, 100_000));
        if (torque is not null && power is not null)
            row.Error(FormTable.Power, "Torque and power are both filled in.", "Keep the one that was read.");
        var density = Density(row, row.Required(FormTable.Temperature, 60));
        List<(ReadingKind, double)> readings = [];
        if (thrust is { } pull)
            readings.Add((ReadingKind.Thrust, pull));
        if ((torque ?? (power is { } watts ? PropellerLoads.TorqueFromPower(watts, speed / 60) : null)) is { } turning)
            readings.Add((ReadingKind.Torque, turning));
        return double.IsNaN(speed + density) ? null : new MeasuredRun.Bench(name, speed, density) { Readings = readings };
    }

    private MeasuredRun.Hang? Hang(FormRow row, string name)
    {
        var (offset, straps) = (row.Offset(), row.Word(FormTable.Straps));
        var (left, right) = (row.Required(FormTable.LeftScale, MostNewtons), row.Required(FormTable.RightScale, MostNewtons));
        if (straps is null && !row.Has(FormTable.Straps))
            row.Error(FormTable.Straps, "It is not said how the straps hung.", $"Write {FormTable.AsMarked} or {FormTable.ChangedOver}.");
        return double.IsNaN(offset) || straps is null ? null
            : new MeasuredRun.Hang(name, frame with { OffsetMetres = offset }, straps == FormTable.ChangedOver)
            {
                Readings = [(ReadingKind.LeftScale, left), (ReadingKind.RightScale, right)],
            };
    }

    private MeasuredRun.Angle? Angle(FormRow row, string name)
    {
        var (offset, pull) = (row.Offset(), row.Required(FormTable.Pull, MostNewtons));
        var angle = row.Sided(FormTable.Angle, FormTable.AngleWay, "back", 90 * Degrees);
        return double.IsNaN(offset + pull) || angle is null ? null
            : new MeasuredRun.Angle(name, frame with { OffsetMetres = offset }, pull)
            {
                Readings = [(ReadingKind.HangAngle, angle.Value / Degrees)],
            };
    }

    private MeasuredRun.Flight? Flight(FormRow row, string name)
    {
        var read = $"{rpm} {FormTable.RpmRead}";
        var isOff = row.Text(FormTable.Engine).Equals(FormTable.Off, StringComparison.OrdinalIgnoreCase);
        if (isOff && row.Has(read))
            row.Error(read, "The engine is off, and rpm were read.",
                $"Clear them, or write {FormReader.Extra} as the name of the run and its rpm in the column engine.");
        var speed = isOff ? 0 : row.Required(read, 30_000) / reduction;
        var (offset, fraction, lead) = (row.Offset(), row.Number(FormTable.SpeedSystem, 1) ?? 0, row.Number(FormTable.Lead, 30) ?? 0);
        var side = row.Word(FormTable.LeadSide);
        if (lead > 0 && side is not ("left" or "right"))
            row.Error(FormTable.LeadSide, "It is not said on which side the lead hangs.", "Write left or right.");
        var altitude = row.Required(FormTable.Altitude, MostMetres);
        var pilot = row.Number(FormTable.PilotMass, 250);
        List<(ReadingKind, double)> readings = [];
        void Add(ReadingKind kind, double? value)
        {
            if (value is { } given)
                readings.Add((kind, given));
        }

        Add(ReadingKind.Airspeed, row.Number(FormTable.Airspeed, 40));
        Add(ReadingKind.Climb, row.Sided(FormTable.Climb, FormTable.ClimbWay, "up", 15));
        Add(ReadingKind.Lean, 1000 * row.Sided(FormTable.Lean, FormTable.LeanSide, "right", 0.5));
        Add(ReadingKind.Turn, Turn(row));
        Add(ReadingKind.BarTilt, row.Sided(FormTable.BarTilt, FormTable.LowSide, "right", 60 * Degrees) / Degrees);
        if (double.IsNaN(speed + offset + altitude + fraction + lead + (pilot ?? 0)) || lead > 0 && side is not ("left" or "right"))
            return null;
        var phase = new Phase(name, 0, new FlightSpeed.AtFraction(fraction),
            isOff ? new PhasePower.EngineOff() : new PhasePower.AtRpm(speed), altitude);
        return new MeasuredRun.Flight(name, frame with { OffsetMetres = offset }, phase, side == "left" ? -lead : lead)
        {
            PilotKilograms = pilot,
            Readings = readings,
        };
    }

    /// <summary>deg/s, to the right +; null where nothing was read.</summary>
    private static double? Turn(FormRow row)
    {
        var (side, seconds) = (row.Word(FormTable.TurnSide), row.Number(FormTable.TurnTime, 3600));
        if (side == "straight" && seconds is not null)
            row.Error(FormTable.TurnTime, "It flew straight, and a time for a full turn is filled in.", "Clear one of the two.");
        if (side is null && seconds is not null && !row.Has(FormTable.TurnSide))
            row.Error(FormTable.TurnSide, "A time for a full turn is filled in, and not to which side.", "Write left or right.");
        if (side is "left" or "right" && seconds is null or 0)
            row.Error(FormTable.TurnTime, "It turned, and the time for a full turn is not filled in.", "Fill it in, or clear the side.");
        return side switch
        {
            "straight" => 0,
            "left" => -360 / seconds,
            "right" => 360 / seconds,
            _ => null,
        };
    }

    private static double Density(FormRow row, double celsius)
    {
        var altitude = row.Required(FormTable.Altitude, MostMetres);
        return double.IsNaN(altitude + celsius) || altitude < Atmosphere.LowestAltitudeMetres ? double.NaN
            : Atmosphere.DensityKgPerM3(altitude, celsius + 273.15 - Atmosphere.TemperatureKelvin(altitude, 0));
    }
}
