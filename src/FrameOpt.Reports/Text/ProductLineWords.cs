using FrameOpt.Model;
using FrameOpt.ProductLine;
using FrameOpt.Running;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.Text;

/// <summary>A product line in words: the one place that words it.</summary>
internal static class ProductLineWords
{
    /// <summary>Where no geometry is allowed.</summary>
    public const string None = "none: measure and make";

    /// <summary>What a customer's cost is: "residual_rms", or "shortfall of weight_shift_authority[cruise]".</summary>
    public static string Cost(LineSetting setting)
    {
        var name = StudyWords.Name(setting.Goal.Response, setting.Goal.Magnitude);
        return setting.Goal.Maximise ? $"shortfall of {name}" : name;
    }

    /// <summary>What the line makes small: "mean residual_rms of the customers".</summary>
    public static string Value(LineSetting setting) => setting.Objective switch
    {
        LineObjective.Mean => $"share-weighted mean of {Cost(setting)}",
        LineObjective.Worst => $"{Cost(setting)} of the worst-served customer",
        LineObjective.Percentile { Part: var part } => Invariant($"{Cost(setting)} that {100 * part:0.##} % of the customers do not exceed"),
        LineObjective.Blend { WorstWeight: var weight } => Invariant($"blend of {100 - 100 * weight:0.##} % mean and {100 * weight:0.##} % worst {Cost(setting)}"),
        _ => throw new ArgumentOutOfRangeException(nameof(setting)),
    };

    /// <summary>An amount of cost with its unit.</summary>
    public static string Amount(LineSetting setting, double cost) => double.IsInfinity(cost) ? "not allowed" : Figures.Text(cost, setting.Goal.Response.Entry);

    /// <summary>Where the holes are: "22 mm left".</summary>
    public static string Hole(Study study, FrameGeometry design) =>
        design.OffsetMetres == 0 ? "in the middle" : $"{Offset(study).Unit.Text(Math.Abs(design.OffsetMetres))} {SideWords.Side(design.OffsetMetres)}";

    /// <summary>How far each hang point is from the plane of symmetry: left, right.</summary>
    public static (string Left, string Right) Drill(Study study, FrameGeometry design)
    {
        var unit = study.Factors.First(factor => factor.Input == GeometryInput.HangPointSpacing).Unit;
        string Place(double metres, string side) => metres < 0 ? $"{unit.Text(-metres)} to the {side}" : unit.Text(metres);
        return (Place(DrillingDimensions.LeftMetres(design), "right"), Place(DrillingDimensions.RightMetres(design), "left"));
    }

    /// <summary>The further factors of a design: those that are swept, without spacing and offset.</summary>
    public static IEnumerable<StudyFactor> Further(Study study) =>
        study.Factors.Where(factor => factor.IsSwept && factor.Input is not (GeometryInput.HangPointSpacing or GeometryInput.LateralOffset));

    /// <summary>A design in one short line: hole, spacing, further factors.</summary>
    public static string Design(Study study, FrameGeometry design) => string.Join(
        ", ",
        [
            Hole(study, design),
            .. study.Factors.Where(factor => factor is { Input: GeometryInput.HangPointSpacing, IsSwept: true }).Concat(Further(study))
                .Select(factor => $"{Short(factor)} {factor.Unit.Text(design[factor.Input])}"),
        ]);

    /// <summary>A factor in a word or two.</summary>
    public static string Short(StudyFactor factor) => factor.Input switch
    {
        GeometryInput.HangPointSpacing => "spacing",
        GeometryInput.SuspensionHeight => "height",
        GeometryInput.ThrustLineAngle => "thrust angle",
        GeometryInput.ThrustLineTilt => "tilt",
        _ => factor.Name.Replace('_', ' '),
    };

    /// <summary>Customers that nothing tells apart, by the name of the first.</summary>
    public static string Name(LineSetting setting, LineRow row)
    {
        var first = setting.Customers[row.Customers[0]].Name;
        return row.Customers.Count == 1 ? first : $"{first} and {Figures.Count(row.Customers.Count - 1)} like it";
    }

    /// <summary>Mass and choices of a row.</summary>
    public static string Outfit(LineSetting setting, LineRow row) =>
        string.Join(", ", [Invariant($"{row.PilotMassKilograms:0.#} kg"), .. setting.Outfits[row.Outfit].Choices]);

    /// <summary>"A up to 77 kg, B from 78 kg".</summary>
    public static string Spans(LineResult result, IReadOnlyList<FittingSpan> spans) => string.Join(", ", spans.Select((span, s) =>
    {
        var letter = span.Geometry < 0 ? "none" : Letter(result, span.Geometry);
        var masses = spans.Count == 1 ? "for every mass of the chart"
            : s == 0 ? Invariant($"up to {span.ToKilograms} kg")
            : s == spans.Count - 1 ? Invariant($"from {span.FromKilograms} kg")
            : span.FromKilograms == span.ToKilograms ? Invariant($"at {span.FromKilograms} kg")
            : Invariant($"from {span.FromKilograms} to {span.ToKilograms} kg");
        return $"{letter} {masses}{(span.Geometry < 0 ? " (measure and make)" : "")}";
    }));

    /// <summary>The letter of a geometry, or that there is none.</summary>
    public static string Letter(LineResult result, int geometry) => geometry < 0 ? None : result.Geometries[geometry].Letter.ToString();

    /// <summary>The boundary masses of every column of the chart, one sentence each.</summary>
    public static IEnumerable<string> Boundaries(LineResult result) => result.Chart.Blocks.SelectMany(block => block.Columns.Select(column =>
        $"{column.Name}{(block.Title.Length > 0 ? $", {block.Title}" : "")}: {Spans(result, column.Spans)}."));

    /// <summary>"3 geometries", "one geometry".</summary>
    public static string Geometries(int count) => count == 1 ? "one geometry" : $"{count} geometries";

    /// <summary>What all have alike; nothing when nothing is asked.</summary>
    public static string Common(LineSetting setting) => string.Join(" ", new[]
    {
        setting.Common switch
        {
            LineCommon.Spacing => "All have one hang-point spacing.",
            LineCommon.Frame => "All are one frame: only the holes differ.",
            _ => "",
        },
        setting.HolePitchMetres is { } pitch ? Invariant($"Offsets are multiples of {1000 * pitch:0.###} mm.") : "",
    }.Where(words => words.Length > 0));

    private static StudyFactor Offset(Study study) => study.Factors.First(factor => factor.Input == GeometryInput.LateralOffset);
}
