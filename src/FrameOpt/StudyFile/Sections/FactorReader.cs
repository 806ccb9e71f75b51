using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the factors: ranges, lists of values, fixed values.</summary>
internal static class FactorReader
{
    /// <summary>Largest number of levels one factor may have.</summary>
    public const int MaxLevels = 100_000;

    /// <summary>Largest number of values that are listed one by one.</summary>
    private const int MaxValues = 10_000;

    /// <summary>The factors that could be read, in the order of <see cref="FactorCatalogue"/>.</summary>
    /// <param name="factors">The section, or null after an error.</param>
    /// <param name="holes">Which decide spacing and offset, or null.</param>
    public static IReadOnlyList<StudyFactor> Read(Section? factors, HolePattern? holes)
    {
        if (factors is null)
            return [];
        return [.. FactorCatalogue.All.Select(input => holes is not null && HolePattern.Decides(input) ? holes.Factor(input)
            : ReadOne(factors, input)).OfType<StudyFactor>()];
    }

    /// <summary>A factor fixed at one value given outside a file, or null after an error.</summary>
    public static StudyFactor? ReadFixed(string name, string value, DiagnosticBag diagnostics)
    {
        if (FactorCatalogue.Find(name) is not { } input)
        {
            string[] names = [.. FactorCatalogue.All.Select(known => known.Name)];
            diagnostics.Add(0, 0, name, "There is no geometry input of this name.", NearestName.Of(name, names) is { } near
                ? $"Did you mean `{near}`?"
                : $"They are {string.Join(", ", names)}.");
            return null;
        }

        var node = new Node.Scalar(value, false, 0, 0);
        return Quantity.Read(node, name, DimensionOf(input), AllowedRangeOf(input), diagnostics) is { } typed
            ? new StudyFactor(input, [typed.Base], UnitOf(typed))
            : null;
    }

    public static Dimension DimensionOf(GeometryInput input) =>
        input.Kind == InputKind.Angle ? Dimension.Angle : Dimension.Length;

    public static AllowedRange AllowedRangeOf(GeometryInput input) => input.IsPositive
        ? AllowedRange.PositiveUpTo(input.Kind.LargestSi, input.Kind.LargestText)
        : AllowedRange.Within(input.Kind.LargestSi, input.Kind.LargestText);

    private static StudyFactor? ReadOne(Section factors, GeometryInput input)
    {
        var name = input.Name;
        switch (factors.Value(name))
        {
            case null:
                return null;
            case Node.Map map:
                var section = Section.Open(map, factors.KeyAt(name), factors.PathOf(name), StudyKeys.Factor, factors.DiagnosticBag)!;
                return section.Has("values") ? FromValues(section, input) : FromRange(section, input);
            default:
                return Quantity.Read(factors.Value(name)!, factors.PathOf(name), DimensionOf(input), AllowedRangeOf(input),
                    factors.DiagnosticBag) is { } fixedAt
                    ? new StudyFactor(input, [fixedAt.Base], UnitOf(fixedAt))
                    : null;
        }
    }

    private static StudyFactor? FromValues(Section section, GeometryInput input)
    {
        foreach (var key in new[] { "from", "to", "step" }.Where(section.Has))
            section.DiagnosticBag.Add(section.At(key), $"{section.Path} gives both values and {key}.",
                "Keep `values`, or `from`, `to` and `step`.");
        var values = section.List("values");
        if (section.Value("values") is Node.List list && values.Count == 0)
            section.DiagnosticBag.Add(list, $"{section.Path} has no values.", "Give one or more, each with its unit.");
        if (values.Count > MaxValues)
        {
            section.DiagnosticBag.Add(section.KeyAt("values"), $"{section.Path} has {values.Count} values; {MaxValues} is the most.",
                "Leave some out: frames are not drilled that finely.");
            return null;
        }

        var levels = new List<Quantity>();
        var known = new HashSet<double>();
        foreach (var node in values)
        {
            var level = Quantity.Read(node, section.Path, DimensionOf(input), AllowedRangeOf(input), section.DiagnosticBag);
            if (level is null)
                continue;
            if (!known.Add(level.Base))
                section.DiagnosticBag.Add(node, $"{section.Path} has this value twice.", "Remove one of the two.");
            levels.Add(level);
        }

        return levels.Count == 0 ? null : new StudyFactor(input, [.. levels.Select(level => level.Base).Order()], UnitOf(levels[0]));
    }

    private static StudyFactor? FromRange(Section section, GeometryInput input)
    {
        foreach (var key in new[] { "from", "to" }.Where(key => !section.Has(key)))
            section.DiagnosticBag.Add(section.Owner, $"{section.Path}.{key} is missing.",
                "Write from, to and step, or values with a list, or one value for a fixed factor.");
        var from = section.Quantity("from", DimensionOf(input), AllowedRangeOf(input));
        var to = section.Quantity("to", DimensionOf(input), AllowedRangeOf(input));
        var step = section.Quantity("step", DimensionOf(input),
            AllowedRange.PositiveUpTo(input.Kind.LargestSi, input.Kind.LargestText));
        if (from is null || to is null || (step is null && section.Has("step")))
            return null;
        if (step is null)
            return GoesUpward(section, from.Base < to.Base)
                ? new StudyFactor(input, [from.Base, to.Base], UnitOf(from)) { IsContinuous = true } : null;
        var typed = FactorRange.Of(from, to, step);
        if (typed is null)
        {
            section.DiagnosticBag.Add(section.Owner, $"{section.Path} has numbers with too many digits.", "Round them.");
            return null;
        }

        return Levels(section, typed) is { } levels ? new StudyFactor(input, levels, UnitOf(from)) : null;
    }

    private static double[]? Levels(Section section, FactorRange range)
    {
        if (!GoesUpward(section, range.From < range.To))
            return null;
        if (range.Steps > MaxLevels)
        {
            section.DiagnosticBag.Add(section.At("step"), FormattableString.Invariant(
                $"{section.Path} would have {range.Steps:0} levels; {MaxLevels} is the most."),
                "Write a larger step: frames are not drilled that finely.");
            return null;
        }

        if (range.Fits)
            return section.DiagnosticBag.Cache.Get(
                FormattableString.Invariant($"levels {range.From} {range.To} {range.Step} {range.Unit.Text}"), section.DiagnosticBag,
                range.LevelsSi);
        section.DiagnosticBag.Add(section.At("step"), $"The step of {section.Path} does not fit between from and to.", range.Suggestion());
        return null;
    }

    private static bool GoesUpward(Section section, bool does)
    {
        if (!does)
            section.DiagnosticBag.Add(section.At("to"), $"{section.Path} must go upward: to is not above from.",
                "Exchange the two, or write one value for a fixed factor.");
        return does;
    }

    public static DisplayUnit UnitOf(Quantity typed) => new(typed.Unit.Text == "°" ? "deg" : typed.Unit.Text, typed.Unit.ToBase(1));
}
