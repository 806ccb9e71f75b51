using FrameOpt.Model;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the list of masses.</summary>
internal static class MassReader
{
    private static readonly AllowedRange item = AllowedRange.PositiveUpTo(500, "500 kg");

    public static IReadOnlyList<MassItem> Read(Section machine)
    {
        var nodes = machine.List("masses");
        var masses = new List<MassItem>();
        foreach (var (index, node) in nodes.Index())
        {
            if (Section.Open(node, node, $"machine.masses[{index + 1}]", StudyKeys.Mass, machine.DiagnosticBag) is not { } section)
                continue;
            var mass = ReadOne(section);
            if (mass.Name.Length > 0 && masses.Any(other => other.Name == mass.Name))
                machine.DiagnosticBag.Add(section.At("name"), "Two masses have this name.", "Give each its own.");
            masses.Add(mass);
        }

        if (machine.Value("masses") is Node.List && !masses.Any(mass => mass.IsBody))
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
                "Add for example `mass: 5.5 kg`, or `volume: 6 l, density: 750 kg/m³`.");
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
                // Taken as marked, so that the list is not blamed a second time.
                return true;
        }
    }
}
