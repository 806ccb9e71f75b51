using FrameOpt.Model;
using FrameOpt.Numerics;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the machine: masses, hang line, propeller, engine, pilot.</summary>
internal static class MachineReader
{
    public static Machine? Read(Section? machine)
    {
        if (machine is null)
            return null;
        var masses = MassReader.Read(machine);
        var hangLine = machine.Child("hang_line", StudyKeys.HangLine)?.Number("forward", Dimension.Length, AllowedRange.Within(3, "3 m"));
        var propeller = PropellerReader.Read(machine.Child("propeller", StudyKeys.Propeller));
        var engine = EngineReader.Read(machine.Child("engine", StudyKeys.Engine));
        var pilot = ReadPilot(machine.Child("pilot", StudyKeys.Pilot));
        if (hangLine is null || propeller is null || pilot is null)
            return null;
        WarnOfHubInFront(machine, masses, propeller);
        return new Machine(masses, hangLine.Value, propeller, engine, pilot);
    }

    private static Pilot? ReadPilot(Section? pilot)
    {
        if (pilot is null)
            return null;
        var lean = pilot.Number("lean", Dimension.Length, AllowedRange.PositiveUpTo(0.5, "500 mm"));
        var dragArea = pilot.Number("drag_area", Dimension.Area, AllowedRange.NonNegativeUpTo(5, "5 m²"));
        return pilot.Child("drag_centre", StudyKeys.DragCentre) is { } centre ? new Pilot(lean, dragArea, centre.Point()) : null;
    }

    private static void WarnOfHubInFront(Section machine, IReadOnlyList<MassItem> masses, Propeller propeller)
    {
        var body = masses.Where(item => item.IsBody).ToList();
        if (body.Count > 0 && propeller.Hub.ForwardMetres > body.Max(item => item.At.ForwardMetres))
            machine.DiagnosticBag.AddWarning(machine.KeyAt("propeller"),
                "the propeller hub lies in front of the pilot's body: check the signs of forward.");
    }
}

/// <summary>Reads the engine.</summary>
internal static class EngineReader
{
    public static Engine? Read(Section? engine)
    {
        if (engine is null)
            return null;
        var reduction = engine.Number("reduction", Dimension.Number, AllowedRange.PositiveUpTo(20, "20"));
        var efficiency = engine.Number("efficiency", Dimension.Share, AllowedRange.PositiveUpTo(1, "1 (100 %)"));
        var rows = Row.Table(engine, "torque",
            [
                new("crank speed", "5000 rpm", Dimension.Revolutions, AllowedRange.NonNegativeUpTo(30000, "30000 rpm")),
                new("torque", "18.5 N·m", Dimension.Torque, AllowedRange.PositiveUpTo(500, "500 N·m")),
            ], rising: 1);
        return rows is null
            ? null
            : new Engine(new LinearTable([.. rows.Select(row => row[0])], [.. rows.Select(row => row[1])]), reduction, efficiency);
    }
}
