using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Sections;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile;

/// <summary>Reads the geometries of a line that are made already.</summary>
/// <param name="study">The study itself.</param>
/// <param name="rotations">How the propellers of the line turn.</param>
/// <param name="separate">True when a geometry serves engines that turn one way only.</param>
internal sealed class ProductLineGeometriesReader(Study study, IReadOnlyList<Rotation> rotations, bool separate)
{
    /// <summary>m or rad: rounding of a unit, far below what can be drilled.</summary>
    private const double Same = 1e-7;

    /// <summary>How many geometries the whole line has; an error where more are given.</summary>
    public static int Count(Section line, int given)
    {
        var least = Math.Clamp(given, 1, ProductLineSetting.MaxGeometries);
        var count = line.Integer("variants", least, 1, ProductLineSetting.MaxGeometries);
        if (count < least)
            line.DiagnosticBag.Add(line.At("variants"), $"variants is {count}, and the {given} of geometries count.",
                $"Write {given} or more, or leave variants out: then nothing is chosen.");
        return Math.Max(count, least);
    }

    /// <summary>The sections of the list, with their names checked.</summary>
    public static IReadOnlyList<Section> Sections(Section line)
    {
        var nodes = line.List("geometries");
        if (line.Value("geometries") is Node.List && nodes.Count is 0 or > ProductLineSetting.MaxGeometries)
            line.DiagnosticBag.Add(line.KeyAt("geometries"),
                $"{nodes.Count} geometries are listed; there can be 1 to {ProductLineSetting.MaxGeometries}.",
                "List those that are made already, or remove `geometries`.");
        var sections = nodes.Select((node, g) => Section.Open(
            node, node, $"line.geometries[{g + 1}]", LineKeys.ProductLineGeometry, line.DiagnosticBag)).OfType<Section>().ToList();
        foreach (var (g, section) in sections.Index())
        {
            if (section.Text("name") is not { } name)
                continue;
            if (NameRules.Problem("geometry", name) is var (what, fix))
                section.DiagnosticBag.Add(section.At("name"), what, fix);
            else if (name.Length > FixedGeometry.MaxName)
                section.DiagnosticBag.Add(section.At("name"), $"The name of a geometry has {name.Length} characters; "
                    + $"{FixedGeometry.MaxName} is the most: it stands in every cell of the fitting chart.", "Shorten it.");
            else if (sections.Take(g).Any(other => other.Text("name") is { } earlier && NameRules.AreAlike(earlier, name)))
                section.DiagnosticBag.Add(section.At("name"), "Two geometries have this name.", "Give each its own.");
        }

        return sections;
    }

    /// <summary>The geometries; valid only if there are no errors.</summary>
    /// <param name="sections">One for each.</param>
    /// <param name="pitch">Of the holes, m, or null.</param>
    public IReadOnlyList<FixedGeometry> Read(IReadOnlyList<Section> sections, double? pitch)
    {
        List<FixedGeometry> geometries = [.. sections.Select(section => new FixedGeometry(section.Text("name")!.Trim(),
            GeometryReader.Read(section, study, $"the geometry {section.Text("name")}"), Turns(section)))];
        if (!sections.Any(section => section.DiagnosticBag.HasErrors))
            Warn(sections, geometries, pitch);
        return geometries;
    }

    /// <summary>Reports fixed geometries that do not have in common what the whole line must.</summary>
    public void CheckCommon(Section line, IReadOnlyList<FixedGeometry> geometries, ProductLineCommon common, bool choosesFromGrid)
    {
        var shared = study.Factors.Where(factor => common switch
        {
            ProductLineCommon.Spacing => factor.Input == GeometryInput.HangPointSpacing,
            ProductLineCommon.Frame => factor.Input != GeometryInput.LateralOffset,
            _ => false,
        }).ToList();
        foreach (var factor in geometries.Count == 0 ? [] : shared)
        {
            var first = geometries[0].Design[factor.Input];
            if (geometries.FirstOrDefault(one => one.Design[factor.Input] != first) is { } other)
                line.DiagnosticBag.Add(line.At("common"), $"The geometries {geometries[0].Name} and {other.Name} differ in {factor.Name}, "
                    + "which the whole line is to have in common.", "Remove `common`, or one of the two.");
            else if (choosesFromGrid && !factor.LevelsSi.Contains(first))
                line.DiagnosticBag.Add(line.At("common"), $"No design of the grid has the {factor.Name} of the geometry "
                    + $"{geometries[0].Name}, {factor.Unit.Text(first)}, which the whole line is to have in common.",
                    $"Let {factor.Name} have that level, or remove `common`.");
        }
    }

    /// <summary>Warns of what is allowed and hardly meant: two geometries that are the same, one outside the study's range of a factor, one
    /// off the pitch of the holes.</summary>
    private void Warn(IReadOnlyList<Section> sections, IReadOnlyList<FixedGeometry> geometries, double? pitch)
    {
        foreach (var (g, one) in geometries.Index())
        {
            var bag = sections[g].DiagnosticBag;
            if (geometries.Take(g).FirstOrDefault(other => other.Turns == one.Turns && AreSame(other.Design, one.Design)) is { } twin)
                bag.AddWarning(sections[g].Owner, $"the geometries {twin.Name} and {one.Name} have the same dimensions, so that nobody "
                    + $"needs {one.Name}. Check the two, or remove one.");
            foreach (var factor in study.Factors.Where(factor => factor.IsSwept))
            {
                var (si, low, high) = (one.Design[factor.Input], factor.LevelsSi[0], factor.LevelsSi[^1]);
                if (si < low - Same || si > high + Same)
                    bag.AddWarning(sections[g].At(factor.Name), $"{factor.Name} of the geometry {one.Name} is {factor.Unit.Text(si)}, "
                        + $"outside the study's range, {factor.Unit.Text(low)} to {factor.Unit.Text(high)}. Check it; if it is right, "
                        + "geometries like it are not among the candidates: widen the range.");
            }

            if (pitch is { } hole && Math.Abs(Math.IEEERemainder(one.Design.OffsetMetres, hole)) > Same)
                bag.AddWarning(sections[g].At(GeometryInput.LateralOffset.Name), $"lateral_offset of the geometry {one.Name} is "
                    + $"{study.Factor(GeometryInput.LateralOffset).Unit.Text(one.Design.OffsetMetres)}, no multiple of hole_pitch: its "
                    + "holes do not fit the pattern of the others.");
        }
    }

    private bool AreSame(FrameGeometry one, FrameGeometry other) =>
        study.Factors.All(factor => Math.Abs(one[factor.Input] - other[factor.Input]) <= Same);

    private Rotation? Turns(Section section)
    {
        if (section.Has("turns"))
        {
            var turns = PropellerReader.ReadRotation(section);
            // A variant may put one engine in the place of all: the geometry stays in the line, and nobody gets it.
            if (!rotations.Contains(turns))
                section.DiagnosticBag.AddWarning(section.At("turns"),
                    $"no engine of the line turns that way, so that nobody gets the geometry {section.Text("name")}.");
            return turns;
        }

        if (separate)
            section.DiagnosticBag.Add(section.Owner, $"{section.PathOf("turns")} is missing: the engines of the line turn both ways, and a "
                + "geometry serves one of them.", "Write `turns: clockwise` or `turns: counter-clockwise`, as seen from behind.");
        return null;
    }
}
