using FrameOpt.Model;
using FrameOpt.Numerics;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the machine: masses, hang line, propeller, engine, pilot.</summary>
internal static class MachineReader
{
    private const string Moving = "moving";

    public static Machine? Read(Section? machine)
    {
        if (machine is null)
            return null;
        var masses = MassReader.Read(machine);
        var hangLine = machine.Child("hang_line", StudyKeys.HangLine)?.Number("forward", Dimension.Length, AllowedRange.Within(3, "3 m"));
        var arms = ReadArms(machine);
        var (datum, hangPoint) = (ReadPointName(machine, "datum"), ReadPointName(machine, "hang_point"));
        var propeller = PropellerReader.Read(machine.Child("propeller", StudyKeys.Propeller));
        var engine = EngineReader.Read(machine.Child("engine", StudyKeys.Engine));
        var pilot = ReadPilot(machine.Child("pilot", StudyKeys.Pilot));
        WarnOfUnnamedPoints(machine);
        if (hangLine is null || propeller is null || pilot is null)
            return null;
        return new Machine(masses, hangLine.Value, propeller, engine, pilot) { Arms = arms, Datum = datum, HangPoint = hangPoint };
    }

    private static RiserArms ReadArms(Section machine)
    {
        if (machine.Has("arms"))
            return machine.Choice("arms", ["rigid", Moving]) == Moving ? RiserArms.Moving : RiserArms.Rigid;
        machine.DiagnosticBag.AddAssumption("arms that the risers hang from", "rigid, or none",
            $"assumption: on arms that swing freely, give the arms' pivots as hang points and write `arms: {Moving}`");
        return RiserArms.Rigid;
    }

    /// <summary>A builder's words for a point, on one line.</summary>
    private static string ReadPointName(Section machine, string key)
    {
        if (machine.Text(key) is not { } text)
            return "";
        if (NameRules.Problem(key, text) is var (what, fix))
            machine.DiagnosticBag.Add(machine.At(key), what, fix);
        return VisibleText.Quoted(text);
    }

    /// <summary>Without them a height can be measured from or to another point than the one that was meant.</summary>
    private static void WarnOfUnnamedPoints(Section machine)
    {
        string[] missing = [.. new[] { "datum", "hang_point", "arms" }.Where(key => !machine.Has(key))];
        if (missing.Length > 0)
            machine.DiagnosticBag.AddWarning(machine.Owner, $"the machine does not give {Key.List(missing)}: whoever builds from this "
                + "must know which point heights are measured from, which point of hook or hole they are measured to, and whether the "
                + "arms are rigid or moving.");
    }

    private static Pilot? ReadPilot(Section? pilot)
    {
        if (pilot is null)
            return null;
        var lean = pilot.Number("lean", Dimension.Length, AllowedRange.PositiveUpTo(0.5, "500 mm"));
        var dragArea = pilot.Number("drag_area", Dimension.Area, AllowedRange.NonNegativeUpTo(5, "5 m²"));
        return pilot.Child("drag_centre", StudyKeys.DragCentre) is { } centre ? new Pilot(lean, dragArea, centre.Point()) : null;
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
                new("crank speed", Dimension.Revolutions, AllowedRange.NonNegativeUpTo(30000, "30000 rpm")),
                new("torque", Dimension.Torque, AllowedRange.PositiveUpTo(500, "500 N·m")),
            ], rising: 1);
        return rows is null
            ? null
            : new Engine(new LinearTable([.. rows.Select(row => row[0])], [.. rows.Select(row => row[1])]), reduction, efficiency);
    }
}

/// <summary>Reads the list of masses.</summary>
internal static class MassReader
{
    private const int MaxMasses = 100;

    private static readonly AllowedRange item = AllowedRange.PositiveUpTo(500, "500 kg");

    public static IReadOnlyList<MassItem> Read(Section machine)
    {
        var nodes = machine.List("masses");
        var masses = new List<MassItem>();
        if (nodes.Count > MaxMasses)
        {
            machine.DiagnosticBag.Add(machine.KeyAt("masses"), $"The machine has {nodes.Count} masses; {MaxMasses} is the most.",
                "Weigh small parts together.");
            return [];
        }

        foreach (var (index, node) in nodes.Index())
        {
            if (Section.Open(node, node, $"machine.masses[{index + 1}]", StudyKeys.Mass, machine.DiagnosticBag) is not { } section)
                continue;
            var mass = ReadOne(section);
            if (section.Value("name") is Node.Scalar && NameRules.Problem("mass", mass.Name) is var (what, fix))
                machine.DiagnosticBag.Add(section.At("name"), what, fix);
            else if (mass.Name.Length > 0 && masses.Any(other => NameRules.AreAlike(other.Name, mass.Name)))
                machine.DiagnosticBag.Add(section.At("name"), "Two masses have this name.", "Give each its own.");
            masses.Add(mass);
        }

        if (machine.Value("masses") is Node.List && nodes.Count == 0)
            machine.DiagnosticBag.Add(machine.KeyAt("masses"), "The machine has no masses.", "List every part that hangs from the risers.");
        else if (machine.Value("masses") is Node.List && !masses.Any(mass => mass.IsBody))
            machine.DiagnosticBag.Add(machine.KeyAt("masses"), "No mass is marked as the pilot's body.",
                "Add `body: true` to the pilot: what leans when weight is shifted.");
        return masses;
    }

    private static MassItem ReadOne(Section section) =>
        new(section.Text("name") ?? "", Kilograms(section), section.Point(), IsBody(section));

    private static double Kilograms(Section section)
    {
        if (section.Has("mass"))
        {
            foreach (var key in new[] { "volume", "density" }.Where(section.Has))
                section.DiagnosticBag.Add(section.At(key), $"{section.Path} gives both a mass and a {key}.",
                    "Keep `mass`, or `volume` and `density`.");
            return section.Number("mass", Dimension.Mass, item);
        }

        if (!section.Has("volume") || !section.Has("density"))
        {
            section.DiagnosticBag.Add(section.Owner, $"{section.Path} needs a mass, or a volume and a density.",
                "Weigh it and add its mass, or add volume and density.");
            return double.NaN;
        }

        var volume = section.Number("volume", Dimension.Volume, AllowedRange.PositiveUpTo(0.2, "200 l"));
        return volume * section.Number("density", Dimension.Density, AllowedRange.Between(100, 20000, "100 kg/m³", "20000 kg/m³"));
    }

    private static bool IsBody(Section section)
    {
        switch (section.Text("body"))
        {
            case null or "false":
                return false;
            case "true":
                return true;
            default:
                section.DiagnosticBag.Add(section.At("body"), "body is true or false.",
                    "Write `body: true` for what leans with the pilot.");
                // Taken as marked, so that the list is not reported a second time.
                return true;
        }
    }
}
