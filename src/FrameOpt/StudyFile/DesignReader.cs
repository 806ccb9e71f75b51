using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Plausibility;
using FrameOpt.StudyFile.Sections;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.StudyFile;

/// <summary>Reads one design given as settings: "lateral_offset=25 mm".</summary>
public static class DesignReader
{
    /// <summary>The design of a study's baseline and fixed factors with the settings put over them.</summary>
    /// <param name="study">Names the factors.</param>
    /// <param name="settings">Each a factor's name, =, and a value with its unit.</param>
    /// <param name="source">What the errors call the place, for example --set.</param>
    public static DesignReadResult Read(Study study, IReadOnlyList<string> settings, string source)
    {
        var diagnostics = new DiagnosticBag(source);
        // A study of one frame means that frame; its baseline is only for comparison.
        var baseline = study.IsOneFrame ? null : study.Baseline;
        var geometry = baseline ?? FrameGeometry.AsBuilt(study.Machine);
        var known = new HashSet<GeometryInput>(baseline is null ? [] : study.Factors.Select(factor => factor.Input));
        foreach (var factor in study.Factors.Where(factor => !factor.IsSwept && !known.Contains(factor.Input)))
        {
            geometry = geometry.With(factor.Input, factor.LevelsSi[0]);
            known.Add(factor.Input);
        }

        var set = new Dictionary<GeometryInput, StudyFactor>();
        foreach (var setting in settings)
        {
            if (Setting(setting, diagnostics) is not { } factor)
                continue;
            if (!set.TryAdd(factor.Input, factor))
                diagnostics.AddForFile($"{factor.Name} is set twice.", "Keep one of the two.");
            geometry = geometry.With(factor.Input, factor.LevelsSi[0]);
            known.Add(factor.Input);
        }

        foreach (var factor in study.Factors.Where(factor => !known.Contains(factor.Input)))
        {
            diagnostics.AddForFile(
                $"{factor.Name} is not set, and the study has no baseline to take it from.",
                $"Add {source} {factor.Name}='{factor.Unit.Text(factor.LevelsSi[factor.LevelsSi.Count / 2])}'.");
        }

        foreach (var (input, factor) in set)
            GeometryChecks.Check(input, factor.LevelsSi[0], study.Machine, new Node.Scalar(factor.Name, false, 0, 0), diagnostics);
        return new DesignReadResult(diagnostics.HasErrors ? null : geometry, Values(study, geometry, set), diagnostics.Diagnostics(),
            [.. diagnostics.Warnings.Select(warning => warning.Text)]);
    }

    private static IReadOnlyList<DesignValue> Values(Study study, FrameGeometry geometry, Dictionary<GeometryInput, StudyFactor> set) =>
    [
        .. study.Factors.Select(factor =>
        {
            var level = geometry[factor.Input];
            var origin = set.ContainsKey(factor.Input) ? "as set" : !factor.IsSwept && factor.LevelsSi[0] == level ? "fixed in the study"
                : "baseline";
            return new DesignValue(factor.At(level), origin);
        }),
        .. set.Values.Where(input => study.Factors.All(factor => factor.Input != input.Input))
            .Select(input => new DesignValue(input, "as set; not a factor of the study")),
    ];

    private static StudyFactor? Setting(string setting, DiagnosticBag diagnostics)
    {
        var at = setting.IndexOf('=');
        if (at >= 0)
            return FactorReader.ReadFixed(setting[..at].Trim(), setting[(at + 1)..], diagnostics);
        diagnostics.Add(0, 0, setting, "A setting is a factor's name, =, and a value with its unit.",
            "Write the name, = and the value without blanks around =, and the value in quotes.");
        return null;
    }
}

/// <summary>Result of reading the settings of one design.</summary>
/// <param name="Geometry">The design, or null when there are errors.</param>
/// <param name="Values">Its inputs: the factors of the study, then any other that was set; valid only with a geometry.</param>
/// <param name="Diagnostics">All of them.</param>
/// <param name="Warnings">What looks odd in the settings but is allowed.</param>
public sealed record DesignReadResult(
    FrameGeometry? Geometry, IReadOnlyList<DesignValue> Values, IReadOnlyList<Diagnostic> Diagnostics, IReadOnlyList<string> Warnings);

/// <summary>One geometry input of a design that was asked for.</summary>
/// <param name="Factor">The input at its one level, in the study's unit, or the typed one where it is no factor of the study.</param>
/// <param name="Origin">Where the level comes from, in words: "as set", "baseline", "fixed in the study".</param>
public sealed record DesignValue(StudyFactor Factor, string Origin)
{
    /// <summary>The level in m or rad.</summary>
    public double Si => Factor.LevelsSi[0];
}
