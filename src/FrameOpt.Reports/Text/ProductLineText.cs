using FrameOpt.Model;
using FrameOpt.ProductLine;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.Text;

/// <summary>A product line in words; every report takes its words from here.</summary>
internal static class ProductLineText
{
    /// <summary>Stands where no geometry is allowed.</summary>
    public const string None = "none: custom frame";

    /// <summary>What a customer's cost is: "residual_rms", or "shortfall of weight_shift_authority[cruise]".</summary>
    public static string Cost(ProductLineSetting setting)
    {
        var name = StudyText.Title(setting.CostResponse.Response, setting.CostResponse.Magnitude);
        return setting.CostResponse.Maximise ? $"shortfall of {name}" : name;
    }

    /// <summary>What the line minimises: "mean residual_rms of the customers".</summary>
    public static string Value(ProductLineSetting setting) => setting.Objective switch
    {
        ProductLineObjective.Mean => $"share-weighted mean of {Cost(setting)}",
        ProductLineObjective.Worst => $"{Cost(setting)} of the worst-served customer",
        ProductLineObjective.Percentile { Part: var part } =>
            Invariant($"{Cost(setting)} not exceeded by {100 * part:0.##} % of the customers"),
        ProductLineObjective.Blend { WorstWeight: var weight } =>
            Invariant($"blend of {100 - 100 * weight:0.##} % mean and {100 * weight:0.##} % worst {Cost(setting)}"),
        _ => throw new ArgumentOutOfRangeException(nameof(setting)),
    };

    /// <summary>An amount of cost with its unit.</summary>
    public static string Amount(ProductLineSetting setting, double cost) =>
        double.IsInfinity(cost) ? "not allowed" : NumberFormat.Text(cost, setting.CostResponse.Response.Entry);

    /// <summary>Where the holes are: "22 mm left".</summary>
    public static string HoleOffset(Study study, FrameGeometry design) =>
        design.OffsetMetres == 0 ? "centred"
            : $"{Offset(study).Unit.Text(Math.Abs(design.OffsetMetres))} {SideText.Side(design.OffsetMetres)}";

    /// <summary>How far each hang point is from the plane of symmetry: left, right.</summary>
    public static (string Left, string Right) DrillingPositions(Study study, FrameGeometry design)
    {
        var unit = study.LengthUnit;
        string Place(double metres, string side) => metres < 0 ? $"{unit.Text(-metres)} to the {side}" : unit.Text(metres);
        return (Place(DrillingDimensions.LeftMetres(design), "right"), Place(DrillingDimensions.RightMetres(design), "left"));
    }

    /// <summary>The factors that are swept, except spacing and offset.</summary>
    public static IEnumerable<StudyFactor> OtherSweptFactors(Study study) =>
        study.Factors.Where(factor => factor.IsSwept && factor.Input != GeometryInput.HangPointSpacing
            && factor.Input != GeometryInput.LateralOffset);

    /// <summary>A design in one short line: hole, spacing, the other swept factors.</summary>
    public static string Design(Study study, FrameGeometry design) => string.Join(
        ", ",
        [
            HoleOffset(study, design),
            .. study.Factors.Where(factor => factor.Input == GeometryInput.HangPointSpacing && factor.IsSwept)
                .Concat(OtherSweptFactors(study))
                .Select(factor => $"{factor.Input.ShortName} {factor.Unit.Text(design[factor.Input])}"),
        ]);

    /// <summary>A number of customers by their weight: "62 pieces", "1 piece", or "31 % of the customers" where they have shares.</summary>
    public static string Pieces(ProductLineSetting setting, double share)
    {
        if (setting.InPieces)
            return NumberFormat.Count((long)Math.Round(share), "piece");
        var percent = 100 * share / setting.Customers.Sum(customer => customer.Share);
        return percent is > 0 and < 0.5 ? "below 1 % of the customers" : Invariant($"{percent:0} % of the customers");
    }

    /// <summary>Customers that nothing tells apart, by the name of the first.</summary>
    public static string Name(ProductLineSetting setting, CustomerSegment row)
    {
        var first = setting.Customers[row.Customers[0]].Name;
        return row.Customers.Count == 1 ? first : $"{first} and {NumberFormat.Count(row.Customers.Count - 1)} more like it";
    }

    /// <summary>Pilot mass and choices of a row of customers.</summary>
    public static string Configuration(ProductLineSetting setting, CustomerSegment row) =>
        string.Join(", ", [Invariant($"{row.PilotMassKilograms:0.#} kg"), .. setting.Configurations[row.Configuration].Choices]);

    /// <summary>"A up to 77 kg, B from 78 kg".</summary>
    public static string Spans(ProductLineResult result, IReadOnlyList<FittingSpan> spans) => string.Join(", ", spans.Select((span, s) =>
    {
        var letter = span.Geometry < 0 ? "none" : GeometryName(result, span.Geometry);
        var masses = spans.Count == 1 ? "for every mass of the chart"
            : s == 0 ? Invariant($"up to {span.ToKilograms} kg")
            : s == spans.Count - 1 ? Invariant($"from {span.FromKilograms} kg")
            : span.FromKilograms == span.ToKilograms ? Invariant($"at {span.FromKilograms} kg")
            : Invariant($"from {span.FromKilograms} to {span.ToKilograms} kg");
        return $"{letter} {masses}{(span.Geometry < 0 ? " (custom frame)" : "")}";
    }));

    /// <summary>The letter of a geometry, or words for none.</summary>
    public static string GeometryName(ProductLineResult result, int geometry) =>
        geometry < 0 ? None : result.Geometries[geometry].Name;

    /// <summary>The boundary masses of every column of the chart, one sentence each.</summary>
    public static IEnumerable<string> Boundaries(ProductLineResult result) =>
        result.Chart.Blocks.SelectMany(block => block.Columns.Select(column =>
        $"{column.Name}{(block.Title.Length > 0 ? $", {block.Title}" : "")} ({StudyText.RotationText(column.Rotation)}): "
            + $"{Spans(result, column.Spans)}."));

    /// <summary>Sentences on the customers that a line leaves out; none when all are served.</summary>
    public static IEnumerable<string> Unserved(ProductLineResult result) =>
        [.. result.UnservedMessages, .. result.Infeasible.Select(reason => Infeasible(result.Setting, reason))];

    /// <summary>"3 geometries", "one geometry".</summary>
    public static string Geometries(int count) => count == 1 ? "one geometry" : $"{count} geometries";

    /// <summary>How many are chosen: "3 geometries", "one geometry beside A and B".</summary>
    public static string Chosen(ProductLineSetting setting) => setting.Fixed.Count == 0 ? Geometries(setting.Count)
        : $"{Geometries(setting.Count - setting.Fixed.Count)} beside {FixedNames(setting)}";

    /// <summary>The names of the geometries that the study fixes: "A, B".</summary>
    public static string FixedNames(ProductLineSetting setting) => string.Join(", ", setting.Fixed.Select(one => one.Name));

    /// <summary>What all geometries have in common; empty when the study asks for nothing.</summary>
    public static string CommonalityText(ProductLineSetting setting) => string.Join(" ", new[]
    {
        setting.Common switch
        {
            ProductLineCommon.Spacing => "All share one hang-point spacing.",
            ProductLineCommon.Frame => "All use one frame: only the holes differ.",
            _ => "",
        },
        setting.HolePitchMetres is { } pitch ? Invariant($"Offsets are multiples of {1000 * pitch:0.###} mm.") : "",
    }.Where(words => words.Length > 0));

    private static string Infeasible(ProductLineSetting setting, InfeasibleCustomers reason)
    {
        var phases = setting.Configurations[reason.Customers.Configuration].Study.Mission;
        var cause = reason.Failure is { } failure ? $"that it cannot fly ({FailureText.Kind(phases, failure)})"
            : $"the limit {StudyText.LimitTitle(reason.Limit!)}";
        return Invariant(
            $"{Name(setting, reason.Customers)}: {cause} rules out {reason.RuledOut:N0} of {reason.Candidates:N0} candidates.");
    }

    private static StudyFactor Offset(Study study) => study.Factor(GeometryInput.LateralOffset);
}

/// <summary>The product line a study asks for, as the tool understood it.</summary>
internal static class ProductLineDescription
{
    public static IEnumerable<DescriptionRow> Of(Study study)
    {
        if (study.Line is not { } line)
            yield break;
        DescriptionRow Row(string what, string value) => new("Product line", what, value);
        yield return Row("geometries", Invariant($"{line.Count}; gains computed up to {line.UpTo}"));
        foreach (var one in line.Fixed)
            yield return Row($"geometry {one.Name}", $"fixed: {ProductLineText.Design(study, one.Design)}"
                + (one.Turns is { } turns ? $"; for propellers that turn {StudyText.RotationText(turns)}" : ""));
        yield return Row("objective", ProductLineText.Value(line));
        var candidates = line.FromGrid ? "every design of the grid" : "the front of the study's own customer";
        yield return Row("candidates", $"{candidates}. {ProductLineText.CommonalityText(line)}".TrimEnd());
        var (lightest, heaviest) = (line.Customers.Min(customer => customer.PilotMassKilograms),
            line.Customers.Max(customer => customer.PilotMassKilograms));
        yield return Row("rotation", line.Rotations.Count == 1
            ? $"every propeller turns {StudyText.RotationText(line.Rotations[0])} seen from behind"
            : $"engines turn both ways; a geometry {(line.AllowBothRotations ? "may serve both" : "serves one of them only")}");
        yield return Row("customers", Invariant($"{NumberFormat.Count(line.Customers.Count)} ({line.CustomersDescription}); ")
            + Invariant($"pilot {lightest:0.#} to {heaviest:0.#} kg, the mass named {line.Configurations[0].Pilot}"));
        foreach (var (option, o) in line.Options.Select((option, o) => (option, o)))
            yield return Row(option.Name, string.Join("; ", option.Choices
                .Select(choice => Invariant($"{choice}: {SharePercent(line, o, choice):0.#} % of the shares"))));
        yield return Row("time", line.Time is { } time ? $"at most {PlainNumber.Text(time.TotalSeconds)} s for each number of geometries"
            : "until optimality is proven");
    }

    private static double SharePercent(ProductLineSetting line, int option, string choice) =>
        100 * line.Customers.Where(customer => line.Configurations[customer.Configuration].Choices[option] == choice).Sum(
            customer => customer.Share) / line.Customers.Sum(customer => customer.Share);
}
