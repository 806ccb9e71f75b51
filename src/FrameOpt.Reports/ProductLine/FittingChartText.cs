using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.ProductLine;

/// <summary>What stands on and under the fitting chart.</summary>
internal static class FittingChartText
{
    /// <summary>How to use it.</summary>
    public const string HowToRead =
        "Find the row of the pilot's own mass, without clothing and equipment, in whole kilograms, and the column of the configuration: "
            + "the letter is the geometry to use; next to it are the offset of both holes and the propeller's rotation, seen from behind. "
            + "None (grey): no geometry is "
            + "allowed; make a custom frame to the pilot's measurements.";

    /// <summary>"75–79 kg".</summary>
    public static string Band(int from, int to) => Invariant($"{from}–{to} kg");

    /// <summary>A cell: the letter and its hole, with the masses where the cell holds several.</summary>
    public static string Cell(ProductLineResult result, FittingSpan span, bool withMasses)
    {
        var geometry = span.Geometry < 0 ? null : result.Geometries[span.Geometry];
        var words = geometry is null ? withMasses ? "none" : ProductLineText.None
            : $"{geometry.Name}  {HoleOffset(result, span)}{(withMasses ? " " : "\n")}"
                + (withMasses ? ServedRotation.Signs(geometry) : ServedRotation.Cell(geometry));
        return withMasses ? $"{Masses(span)}: {words}" : words;
    }

    /// <summary>Where the holes are; nothing where there is no geometry.</summary>
    public static string HoleOffset(ProductLineResult result, FittingSpan span) =>
        span.Geometry < 0 ? "" : ProductLineText.HoleOffset(result.Study, result.Geometries[span.Geometry].Design);

    /// <summary>"78 kg" or "75–77 kg".</summary>
    public static string Masses(FittingSpan span) =>
        span.FromKilograms == span.ToKilograms ? Invariant($"{span.FromKilograms} kg") : Band(span.FromKilograms, span.ToKilograms);

    /// <summary>Under the chart: what each letter is, the boundaries, the danger.</summary>
    public static IEnumerable<string> Notes(ProductLineResult result) =>
        [
            .. ServedRotation.Notes(result), .. Letters(result), DatumText.Sentence(result.Study.Machine),
            .. ProductLineText.Boundaries(result), .. FittingChartReasons.Of(result), .. FittingChartReasons.NotSold(result), .. Warnings,
            .. result.Study.Decision is { } decision ? [DecisionSection.Sentence(result.Study, decision)] : Array.Empty<string>(),
            $"Study file SHA-256 {result.Study.Hash[..12]}; the chart holds for that study only.",
        ];

    /// <summary>What to drill for each letter.</summary>
    public static IEnumerable<string> Letters(ProductLineResult result) => result.Geometries.Select(geometry =>
    {
        var (left, right) = ProductLineText.DrillingPositions(result.Study, geometry.Design);
        return $"{geometry.Name}: propeller {ServedRotation.Text(geometry)}; LEFT hang point {left}, RIGHT {right} from the plane of "
            + "symmetry, seen from behind; "
            + $"{ProductLineText.Design(result.Study, geometry.Design)}.";
    });

    /// <summary>What must not be missing beside it.</summary>
    public static IReadOnlyList<string> Warnings { get; } =
    [
        "Only for the configurations in the study: check the propeller's rotation first, then the hang check, then a tied-down run, then "
            + "fly "
            + "with margin.",
        $"{Cautions.Danger} {Cautions.NotValidated}",
    ];
}

/// <summary>Colours of the geometries on the fitting chart; a letter stands in every one, so that colour is
/// never needed. Black text is readable on all.</summary>
internal static class FittingChartColours
{
    /// <summary>Where no geometry is allowed.</summary>
    public const string Grey = "D9D9D9";

    private static readonly string[] colours = [
        Palette.SkyBlue, Palette.Orange, Palette.Green, Palette.Yellow, Palette.Purple, Palette.Vermillion];

    /// <summary>Of a geometry by its index; grey for -1.</summary>
    public static string Colour(int geometry) => geometry < 0 ? Grey : colours[geometry % colours.Length];

    /// <summary>The class of a drawn cell.</summary>
    public static string Class(int geometry) => geometry < 0 ? "fit-none" : FormattableString.Invariant($"fit-{geometry % colours.Length}");

    /// <summary>The rules of those classes.</summary>
    public static string Rules => string.Concat(Enumerable.Range(-1, colours.Length + 1)
        .Select(geometry => $".{Class(geometry)} {{ fill: #{Colour(geometry)}; }}\n"));
}
