using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.WhatIf;

/// <summary>The coefficients of every phase at levels of spacing, suspension height and thrust-line angle; straight lines between
/// levels.</summary>
internal sealed class WhatIfTable
{
    public const int MaxSpacings = 10;
    public const int MaxHeights = 10;
    public const int MaxAngles = 6;

    private readonly FrameGeometry baseGeometry;

    /// <summary>Fills the table; other geometry inputs stay as in the chosen design.</summary>
    public WhatIfTable(StudyResult result)
    {
        baseGeometry = result.Chosen!.Geometry;
        WhatIfLevels Levels(GeometryInput input, int max) => WhatIfLevels.Of(
            result.Study.Factor(input), max,
                result.Study.Baseline is { } baseline ? [baseGeometry[input], baseline[input]] : [baseGeometry[input]]);
        Spacings = Levels(GeometryInput.HangPointSpacing, MaxSpacings);
        Heights = Levels(GeometryInput.SuspensionHeight, MaxHeights);
        Angles = Levels(GeometryInput.ThrustLineAngle, MaxAngles);
        var reader = new PhaseCoefficientReader(result.Mission);
        Nodes = [.. Angles.Si.SelectMany(angle => Heights.Si.SelectMany(
            height => Spacings.Si.Select(spacing => reader.Evaluate(At(spacing, height, angle)))))];
        LargestErrorNewtonMetres = LargestError(reader);
    }

    public WhatIfLevels Spacings { get; }

    public WhatIfLevels Heights { get; }

    public WhatIfLevels Angles { get; }

    /// <summary>Spacing fastest, then height, then angle; null where some phase cannot be flown at any offset.</summary>
    public IReadOnlyList<PhaseCoefficients[]?> Nodes { get; }

    /// <summary>The largest difference from the model in any phase's residual, in the middle between levels, at the chosen offset with
    /// the wing of every case.</summary>
    public double LargestErrorNewtonMetres { get; }

    /// <summary>Where a node stands in <see cref="Nodes"/>.</summary>
    public int Index(int spacing, int height, int angle) => (angle * Heights.Si.Count + height) * Spacings.Si.Count + spacing;

    /// <summary>The eight nodes around a design with their weights, which sum to 1.</summary>
    public IReadOnlyList<(int Index, double Weight)> Corners(FrameGeometry geometry)
    {
        var (s, h, a) = (Spacings.Bracket(geometry.SpacingMetres), Heights.Bracket(geometry.HeightMetres),
            Angles.Bracket(geometry.AngleRadians));
        return [.. Enumerable.Range(0, 8).Select(corner =>
        {
            var (onS, onH, onA) = ((corner & 1) != 0, (corner & 2) != 0, (corner & 4) != 0);
            var index = Index(onS ? s.Upper : s.Lower, onH ? h.Upper : h.Lower, onA ? a.Upper : a.Lower);
            return (index, (onS ? s.Fraction : 1 - s.Fraction) * (onH ? h.Fraction : 1 - h.Fraction) * (onA ? a.Fraction : 1 - a.Fraction));
        })];
    }

    /// <summary>Every phase at any spacing, height and angle within the levels; null where a level beside it cannot fly.</summary>
    public PhaseCoefficients[]? Interpolate(FrameGeometry geometry)
    {
        var corners = Corners(geometry).Where(corner => corner.Weight != 0).ToList();
        if (corners.Any(corner => Nodes[corner.Index] is null))
            return null;
        return [.. Enumerable.Range(0, Nodes[corners[0].Index]!.Length)
            .Select(phase => corners.Select(corner => corner.Weight * Nodes[corner.Index]![phase]).Aggregate((one, other) => one + other))];
    }

    private FrameGeometry At(double spacing, double height, double angle) =>
        baseGeometry with { SpacingMetres = spacing, HeightMetres = height, AngleRadians = angle };

    private double LargestError(PhaseCoefficientReader reader)
    {
        var largest = 0.0;
        foreach (var angle in Midpoints(Angles.Si))
        {
            foreach (var height in Midpoints(Heights.Si))
            {
                foreach (var spacing in Midpoints(Spacings.Si))
                {
                    var geometry = At(spacing, height, angle);
                    if (Interpolate(geometry) is { } read && reader.Evaluate(geometry) is { } exact)
                        largest = Math.Max(largest, read.Zip(exact, Difference).Max());
                }
            }
        }

        return largest;
    }

    private double Difference(PhaseCoefficients read, PhaseCoefficients exact) => read.Cases.Zip(exact.Cases, (one, other) =>
        Math.Abs((one.Residual - other.Residual).At(baseGeometry.OffsetMetres))).Max();

    private static IEnumerable<double> Midpoints(IReadOnlyList<double> levels) =>
        levels.Count == 1 ? levels : Enumerable.Range(0, levels.Count - 1).Select(i => (levels[i] + levels[i + 1]) / 2);
}

/// <summary>The levels of one factor in the table of the sheet What if.</summary>
/// <param name="Factor">Which, with its unit.</param>
/// <param name="Si">One or more, increasing, in m or rad.</param>
internal sealed record WhatIfLevels(StudyFactor Factor, IReadOnlyList<double> Si)
{
    /// <summary>All levels of a factor if they are few, else so many evenly spread, and always those that must be among them.</summary>
    public static WhatIfLevels Of(StudyFactor factor, int max, IEnumerable<double> kept)
    {
        var all = factor.IsContinuous ? [.. Enumerable.Range(0, max).Select(i => factor.LevelsSi[0] + factor.RangeSi * i / (max - 1))]
            : factor.LevelsSi;
        var spread = all.Count <= max ? all : Enumerable.Range(0, max).Select(i => all[(int)Math.Round(i * (all.Count - 1.0) / (max - 1))]);
        return new WhatIfLevels(factor, [.. spread.Concat(kept.Where(level => level >= all[0] && level <= all[^1])).Distinct().Order()]);
    }

    /// <summary>The level at or below a value, the one to read on to, and how far between; clamped to the first and last two.</summary>
    public (int Lower, int Upper, double Fraction) Bracket(double si)
    {
        if (Si.Count == 1)
            return (0, 0, 0);
        var lower = Math.Clamp(Si.Count(level => level <= si) - 1, 0, Si.Count - 2);
        return (lower, lower + 1, (si - Si[lower]) / (Si[lower + 1] - Si[lower]));
    }
}
