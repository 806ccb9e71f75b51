using FrameOpt.Model;

namespace FrameOpt.Studies.Reading;

/// <summary>Reads the machine: masses, hang line, propeller, engine, pilot.</summary>
internal static class MachineReader
{
    public static Machine? Read(Section? machine)
    {
        if (machine is null)
            return null;
        var masses = MassReader.Read(machine);
        var hangLine = machine.Child("hang_line", StudyKeys.HangLine)?.Number("forward", Dimension.Length, Bound.Within(3, "3 m"));
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
        var lean = pilot.Number("lean", Dimension.Length, Bound.Above0(0.5, "500 mm"));
        var dragArea = pilot.Number("drag_area", Dimension.Area, Bound.From0(5, "5 m²"));
        return pilot.Child("drag_centre", StudyKeys.DragCentre) is { } centre ? new Pilot(lean, dragArea, centre.Point()) : null;
    }

    private static void WarnOfHubInFront(Section machine, IReadOnlyList<MassItem> masses, Propeller propeller)
    {
        var body = masses.Where(item => item.IsBody).ToList();
        if (body.Count > 0 && propeller.Hub.ForwardMetres > body.Max(item => item.At.ForwardMetres))
            machine.Findings.Warn(machine.KeyAt("propeller"), "the propeller hub lies in front of the pilot's body: check the signs of forward.");
    }
}
