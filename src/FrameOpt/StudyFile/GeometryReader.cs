using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Plausibility;
using FrameOpt.StudyFile.Sections;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile;

/// <summary>Reads one geometry of a study from a section: a factor each, or the two holes.</summary>
internal static class GeometryReader
{
    private const string LeftHole = "left_hole", RightHole = "right_hole";

    /// <summary>The geometry; valid only if there are no errors.</summary>
    /// <param name="section">A value for each factor, or the two holes in place of spacing and offset.</param>
    /// <param name="study">Names the factors; what is left out is that of its fixed factors and baseline.</param>
    /// <param name="what">For warnings: "the geometry A".</param>
    public static FrameGeometry Read(Section section, Study study, string what)
    {
        var design = FrameGeometry.AsBuilt(study.Machine);
        var holes = Holes(section);
        foreach (var input in FactorCatalogue.All.Where(input => section.Has(input.Name) && study.Factors.All(f => f.Input != input)))
            section.DiagnosticBag.Add(section.KeyAt(input.Name),
                $"{input.Name} is no factor of this study, and {what} has its factors only; "
                + "all else is that of the machine.", "Add it to `factors` with one value, or remove it here.");
        foreach (var factor in study.Factors.Where(factor => holes is null || !HolePattern.Decides(factor.Input)))
        {
            var value = section.Has(factor.Name)
                ? section.Number(factor.Name, FactorReader.DimensionOf(factor.Input), FactorReader.AllowedRangeOf(factor.Input))
                : !factor.IsSwept ? factor.LevelsSi[0] : study.Baseline?[factor.Input];
            if (value is null)
                section.DiagnosticBag.Add(section.Owner, $"{section.PathOf(factor.Name)} is missing: the study has a range of it and no "
                    + "baseline to take it from.", LineKeys.DecidedDesign.Find(factor.Name)!.FixWhenMissing($"under {section.Path}"));
            design = design.With(factor.Input, value ?? double.NaN);
        }

        if (holes is var (left, right))
            design = HolePattern.Put(design, left, right);
        foreach (var input in study.Factors.Select(factor => factor.Input).Where(input => double.IsFinite(design[input])))
            GeometryChecks.Check(input, design[input], study.Machine,
                section.At(section.Has(input.Name) || !HolePattern.Decides(input) ? input.Name : LeftHole), section.DiagnosticBag,
                $" of {what}");
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
}
