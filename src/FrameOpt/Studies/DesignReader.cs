using FrameOpt.Model;
using FrameOpt.Studies.Reading;

namespace FrameOpt.Studies;

/// <summary>Reads one design given as settings: "lateral_offset=25 mm".</summary>
public static class DesignReader
{
    /// <summary>The design of a study's baseline and fixed factors with the settings put over them.</summary>
    /// <param name="study">Names the factors.</param>
    /// <param name="settings">Each a factor's name, =, and a value with its unit.</param>
    /// <param name="source">What the mistakes call the place, for example --set.</param>
    public static DesignReading Read(Study study, IReadOnlyList<string> settings, string source)
    {
        var findings = new Findings(source);
        var geometry = study.Baseline ?? FrameGeometry.On(study.Machine, 0, 0, 0, 0);
        var known = new HashSet<GeometryInput>(study.Baseline is null ? [] : study.Factors.Select(factor => factor.Input));
        foreach (var factor in study.Factors.Where(factor => !factor.IsSwept && !known.Contains(factor.Input)))
        {
            geometry = geometry.With(factor.Input, factor.LevelsSi[0]);
            known.Add(factor.Input);
        }

        var set = new HashSet<GeometryInput>();
        foreach (var setting in settings)
        {
            if (Setting(setting, findings) is not var (input, value))
                continue;
            if (!set.Add(input))
                findings.MistakeOfFile($"{FactorNames.Of(input)} is set twice.", "Keep one of the two.");
            geometry = geometry.With(input, value);
            known.Add(input);
        }

        foreach (var factor in study.Factors.Where(factor => !known.Contains(factor.Input)))
        {
            findings.MistakeOfFile(
                $"{factor.Name} is not set, and the study has no baseline to take it from.",
                $"Add {source} {factor.Name}='{factor.Unit.Text(factor.LevelsSi[factor.LevelsSi.Count / 2])}'.");
        }

        return new DesignReading(findings.HasMistakes ? null : geometry, findings.Mistakes());
    }

    private static (GeometryInput Input, double Value)? Setting(string setting, Findings findings)
    {
        var at = setting.IndexOf('=');
        var name = (at < 0 ? setting : setting[..at]).Trim();
        if (FactorNames.Find(name) is not { } input)
        {
            var nearest = NearestName.Of(name, FactorNames.All);
            findings.Mistake(0, 0, setting, $"{name} is no factor.", nearest is null
                ? $"The factors are {string.Join(", ", FactorNames.All)}."
                : $"Did you mean {nearest}?");
            return null;
        }

        var dimension = FactorReader.DimensionOf(input);
        var example = $"{name}='{dimension.Example}'";
        if (at < 0)
        {
            findings.Mistake(0, 0, setting, $"{name} has no value.", $"Write {example}.");
            return null;
        }

        var node = new Node.Scalar(setting[(at + 1)..], false, 0, 0);
        return Quantity.Read(node, name, example, dimension, FactorReader.BoundOf(input), findings) is { } quantity
            ? (input, quantity.Base)
            : null;
    }
}
