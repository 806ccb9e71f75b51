using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Plausibility;
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
    private const string LeftHole = "left_hole", RightHole = "right_hole";

    /// <summary>The sections of the list, with their names checked.</summary>
    public static IReadOnlyList<Section> Sections(Section line)
    {
        var nodes = line.List("geometries");
        if (line.Value("geometries") is Node.List && nodes.Count is 0 or > ProductLineSetting.MaxGeometries)
            line.DiagnosticBag.Add(line.KeyAt("geometries"),
                $"{nodes.Count} geometries are listed; there can be 1 to {ProductLineSetting.MaxGeometries}.",
                "List those that are made already, or remove `geometries`.");
        var sections = nodes.Select((node, g) => Section.Open(
            node, node, $"line.geometries[{g + 1}]", StudyKeys.ProductLineGeometry, line.DiagnosticBag)).OfType<Section>().ToList();
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
    public IReadOnlyList<FixedGeometry> Read(IReadOnlyList<Section> sections) =>
        [.. sections.Select(section => new FixedGeometry(section.Text("name")!.Trim(), Design(section), Turns(section)))];

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

    private FrameGeometry Design(Section section)
    {
        var design = FrameGeometry.AsBuilt(study.Machine);
        var holes = Holes(section);
        foreach (var input in FactorCatalogue.All.Where(input => section.Has(input.Name) && study.Factors.All(f => f.Input != input)))
            section.DiagnosticBag.Add(section.KeyAt(input.Name), $"{input.Name} is no factor of this study, and a geometry of a line is one "
                + "of its factors only; all else is that of each machine.", "Add it to `factors` with one value, or remove it here.");
        foreach (var factor in study.Factors.Where(factor => holes is null || !HolePattern.Decides(factor.Input)))
        {
            var value = section.Has(factor.Name)
                ? section.Number(factor.Name, FactorReader.DimensionOf(factor.Input), FactorReader.AllowedRangeOf(factor.Input))
                : !factor.IsSwept ? factor.LevelsSi[0] : study.Baseline?[factor.Input];
            if (value is null)
                section.DiagnosticBag.Add(section.Owner, $"{section.PathOf(factor.Name)} is missing: the study has a range of it and no "
                    + "baseline to take it from.", StudyKeys.ProductLineGeometry.Find(factor.Name)!.FixWhenMissing($"under {section.Path}"));
            design = design.With(factor.Input, value ?? double.NaN);
        }

        if (holes is var (left, right))
            design = HolePattern.Put(design, left, right);
        foreach (var input in study.Factors.Select(factor => factor.Input).Where(input => double.IsFinite(design[input])))
            GeometryChecks.Check(input, design[input], study.Machine,
                section.At(section.Has(input.Name) || !HolePattern.Decides(input) ? input.Name : LeftHole), section.DiagnosticBag,
                $" of the geometry {section.Text("name")}");
        return design;
    }

    /// <summary>From the plane of symmetry to the left and the right hole, where they are given in place of spacing and offset.</summary>
    private static (double Left, double Right)? Holes(Section section)
    {
        if (!section.Has(LeftHole) && !section.Has(RightHole))
            return null;
        foreach (var input in FactorCatalogue.All.Where(input => HolePattern.Decides(input) && section.Has(input.Name)))
            section.DiagnosticBag.Add(section.KeyAt(input.Name), $"{section.Path} gives both holes and {input.Name}.",
                "Keep one of the two: the holes have their own spacing and offset.");
        double Place(string key)
        {
            if (!section.Has(key))
                section.DiagnosticBag.Add(section.Owner, $"{section.PathOf(key)} is missing.",
                    "Write how far each hole is from the plane of symmetry, or spacing and offset in place of the holes.");
            return section.Number(key, Dimension.Length, HoleReader.Place);
        }

        return (Place(LeftHole), Place(RightHole));
    }

    private Rotation? Turns(Section section)
    {
        if (section.Has("turns"))
        {
            var turns = PropellerReader.ReadRotation(section);
            if (!rotations.Contains(turns))
                section.DiagnosticBag.Add(section.At("turns"), "No engine of the line turns that way.", "Remove `turns`, or correct it.");
            return rotations.Count > 1 ? turns : null;
        }

        if (separate)
            section.DiagnosticBag.Add(section.Owner, $"{section.PathOf("turns")} is missing: the engines of the line turn both ways, and a "
                + "geometry serves one of them.", "Write `turns: clockwise` or `turns: counter-clockwise`, as seen from behind.");
        return null;
    }
}
