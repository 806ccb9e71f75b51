using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the holes of a frame, which decide spacing and lateral offset together.</summary>
internal static class HoleReader
{
    /// <summary>The key of the section under factors.</summary>
    public static readonly Key InFactors = Key.Optional(
        "holes", "{ first: 180 mm, pitch: 20 mm, count: 6 }", "first, pitch and count under it, or left and right");

    /// <summary>The keys of one side.</summary>
    public static readonly SectionKeys RowKeys = new("factors.holes.<side>",
        Key.Optional("first", "180 mm"), Key.Optional("pitch", "20 mm"), Key.Optional("count", "6"),
        Key.Optional("values", "[200 mm, 240 mm]"), Key.Optional("drilled", "[200 mm]"));

    /// <summary>The keys of both sides alike, or of each.</summary>
    public static readonly SectionKeys Keys = new("factors.holes",
        [.. RowKeys.Keys, Key.Optional("left", "{ values: [240 mm] }"), Key.Optional("right", "{ values: [200 mm] }")]);

    private const int MaxHoles = 200;
    /// <summary>Where a hole may be: from the plane of symmetry.</summary>
    public static readonly AllowedRange Place = AllowedRange.PositiveUpTo(1.5, "1500 mm");

    /// <summary>The holes; null when the study has none or after an error.</summary>
    public static HolePattern? Read(Section? factors)
    {
        if (factors?.Child(InFactors.Name, Keys) is not { } holes)
            return null;
        foreach (var input in FactorCatalogue.All.Where(input => HolePattern.Decides(input) && factors.Has(input.Name)))
            factors.DiagnosticBag.Add(factors.KeyAt(input.Name), $"{factors.Path} gives both {InFactors.Name} and {input.Name}.",
                "Keep one of the two: each pair of holes has its own spacing and offset.");
        if (!holes.Has("left") && !holes.Has("right"))
            return Row(holes) is { } both ? new HolePattern(both.Row, both.Row, both.Unit) : null;
        foreach (var key in RowKeys.Keys.Where(key => holes.Has(key.Name)))
            holes.DiagnosticBag.Add(holes.KeyAt(key.Name), $"{holes.Path} gives {key.Name} for both sides and holes for one side.",
                "Write the holes once for both sides, or under left and right.");
        foreach (var side in new[] { "left", "right" }.Where(side => !holes.Has(side)))
            holes.DiagnosticBag.Add(
                holes.Owner, $"{holes.PathOf(side)} is missing.", $"Write the holes of the {side} side under `{side}:`.");
        var (left, right) = (Side(holes, "left"), Side(holes, "right"));
        return left is { } ofLeft && right is { } ofRight ? new HolePattern(ofLeft.Row, ofRight.Row, ofLeft.Unit) : null;
    }

    /// <summary>Reports what a study with holes cannot have.</summary>
    public static void Check(Section study, HolePattern? holes, SearchSetting? search, PlanSetting? plan)
    {
        if (holes is null)
            return;
        if (plan is not null)
            study.DiagnosticBag.Add(study.KeyAt("plan"), "A plan varies spacing and offset one by one, which holes do not allow.",
                "Remove `plan`, or write hang_point_spacing and lateral_offset in place of the holes.");
        if (search is SearchSetting.Evolutionary { Start: not null })
            study.DiagnosticBag.Add(study.KeyAt("search"), "Designs to start from have any spacing and offset, and holes do not.",
                "Remove `start`: the search then begins at random.");
    }

    private static (HoleRow Row, DisplayUnit Unit)? Side(Section holes, string side) =>
        holes.Child(side, RowKeys) is { } row ? Row(row) : null;

    private static (HoleRow Row, DisplayUnit Unit)? Row(Section row)
    {
        var places = row.Has("values") ? FromValues(row) : FromPitch(row);
        if (places.Count == 0)
            return null;
        double[] sorted = [.. places.Select(quantity => quantity.Base).Order()];
        var drilled = row.List("drilled").Select(node => (Node: node, Place: Read(row, "drilled", node))).ToList();
        foreach (var (node, there) in drilled)
        {
            if (there is not null && !sorted.Contains(there.Base))
                row.DiagnosticBag.Add(node, $"{row.PathOf("drilled")} names a hole that is none of these.",
                    $"The holes are at {string.Join(", ", sorted.Select(FactorReader.UnitOf(places[0]).Text))}.");
        }

        return (new HoleRow(sorted, row.Has("drilled") ? [.. drilled.Select(one => one.Place?.Base ?? 0)] : null),
            FactorReader.UnitOf(places[0]));
    }

    private static IReadOnlyList<Quantity> FromValues(Section row)
    {
        foreach (var key in new[] { "first", "pitch", "count" }.Where(row.Has))
            row.DiagnosticBag.Add(
                row.KeyAt(key), $"{row.Path} gives both values and {key}.", "Keep `values`, or `first`, `pitch` and `count`.");
        var nodes = row.List("values");
        if (row.Value("values") is Node.List list && nodes.Count is 0 or > MaxHoles)
            row.DiagnosticBag.Add(row.KeyAt("values"), $"{row.Path} has {nodes.Count} holes; it can have 1 to {MaxHoles}.",
                "Give the distance of each from the plane of symmetry.");
        var places = new List<Quantity>();
        foreach (var node in nodes.Take(MaxHoles))
        {
            if (Read(row, "values", node) is not { } place)
                continue;
            if (places.Exists(other => other.Base == place.Base))
                row.DiagnosticBag.Add(node, $"{row.Path} has this hole twice.", "Remove one of the two.");
            places.Add(place);
        }

        return places;
    }

    private static IReadOnlyList<Quantity> FromPitch(Section row)
    {
        foreach (var key in new[] { "first", "pitch", "count" }.Where(key => !row.Has(key)))
            row.DiagnosticBag.Add(row.Owner, $"{row.PathOf(key)} is missing.",
                "Write first, pitch and count, or values with the distance of each hole from the plane of symmetry.");
        var (first, pitch) = (row.Quantity("first", Dimension.Length, Place), row.Quantity("pitch", Dimension.Length, Place));
        var count = row.Integer("count", 0, 1, MaxHoles);
        if (first is null || pitch is null || count == 0)
            return [];
        if (FactorRange.Of(first, first, pitch) is not { } range)
        {
            row.DiagnosticBag.Add(row.Owner, $"{row.Path} has numbers with too many digits.", "Round them.");
            return [];
        }

        var places = range.Levels(count);
        if (!Place.Contains(places[^1].Base))
            row.DiagnosticBag.Add(row.At("count"), $"The last hole of {row.Path} must be {Place.Description}.", "Check pitch and count.");
        return places;
    }

    private static Quantity? Read(Section row, string key, Node node) =>
        Quantity.Read(node, row.PathOf(key), Dimension.Length, Place, row.DiagnosticBag);
}
