using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Compare;

/// <summary>The factors read back from a run.json.</summary>
internal static class FactorsJsonReader
{
    private static readonly Dictionary<string, double> lengths =
        new() { ["mm"] = 0.001, ["cm"] = 0.01, ["m"] = 1, ["in"] = 0.0254, ["ft"] = 0.3048 };
    private static readonly Dictionary<string, double> angles = new() { ["deg"] = Math.PI / 180, ["°"] = Math.PI / 180, ["rad"] = 1 };

    public static IReadOnlyList<StudyFactor> Of(RunJsonElement factors)
    {
        IReadOnlyList<StudyFactor> read = [.. factors.Properties.Select(member => Factor(member.Name, member.Part))];
        foreach (var input in FactorCatalogue.All.Where(input => input.IsRequired))
        {
            if (read.Count(factor => factor.Input == input) != 1)
                throw new InvalidRunFileException(factors.Path, $"{input.Name} must appear exactly once");
        }

        return read;
    }

    /// <summary>A design: the machine as built, with every factor at its level.</summary>
    /// <param name="machine">The machine as built.</param>
    /// <param name="factors">Every factor of the study, the four design factors among them.</param>
    /// <param name="level">Gives the level of a factor, in its own unit.</param>
    public static FrameGeometry Geometry(Machine machine, IReadOnlyList<StudyFactor> factors, Func<StudyFactor, double> level)
    {
        var geometry = FrameGeometry.AsBuilt(machine);
        foreach (var factor in factors)
            geometry = geometry.With(factor.Input, factor.Unit.ToSi(level(factor)));
        return geometry.SpacingMetres > 0 ? geometry : throw new InvalidRunFileException("front", "the spacing must be above 0");
    }

    private static StudyFactor Factor(string name, RunJsonElement factor)
    {
        var input = FactorCatalogue.Find(name) ?? throw new InvalidRunFileException(factor.Path, "unknown factor");
        var symbol = factor["unit"].Text;
        if (!(input.Kind == InputKind.Angle ? angles : lengths).TryGetValue(symbol, out var si))
            throw new InvalidRunFileException(factor.Path, $"unknown unit {symbol}");
        var unit = new DisplayUnit(symbol, si);
        return new StudyFactor(input, [.. factor["levels"].Items.Select(level => unit.ToSi(level.Number))], unit)
        { IsContinuous = factor["any_value_between"].Boolean };
    }
}
