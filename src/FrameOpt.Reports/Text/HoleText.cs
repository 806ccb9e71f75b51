using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Text;

/// <summary>The holes of a frame in words.</summary>
public static class HoleText
{
    /// <summary>Which hole of each side, and whether it must be drilled: "LEFT hole 4 of 6 from the middle, there already".</summary>
    /// <param name="holes">All of them.</param>
    /// <param name="geometry">Its hang points sit in two of them; otherwise nothing is said of that side.</param>
    public static IEnumerable<string> Sentences(HolePattern holes, FrameGeometry geometry) =>
    [
        .. Sentence("LEFT", holes.Left, geometry.LeftMetres),
        .. Sentence("RIGHT", holes.Right, geometry.RightMetres),
    ];

    /// <summary>"6 holes, 180 mm, 200 mm ... from the plane of symmetry; there already: 240 mm".</summary>
    /// <param name="row">Of one side.</param>
    /// <param name="unit">The user's.</param>
    public static string Row(HoleRow row, DisplayUnit unit)
    {
        string Places(IEnumerable<double> places) => string.Join(", ", places.Select(unit.Text));
        var drilled = row.Drilled is not { } there ? ""
            : there.Count == 0 ? "; none is drilled yet"
            : there.Count == row.Places.Count ? "; all are drilled already" : $"; drilled already: {Places(there)}";
        return $"{NumberFormat.Count(row.Places.Count, "hole")}, {Places(row.Places)} from the plane of symmetry{drilled}";
    }

    private static IEnumerable<string> Sentence(string side, HoleRow row, double metres)
    {
        if (row.IndexOf(metres) is not { } hole)
            yield break;
        var drilled = row.Drilled is null ? "" : row.IsDrilled(hole) ? ", drilled already" : ", NEW: to be drilled";
        yield return $"{side} hole {hole + 1} of {row.Places.Count}, counted from the middle{drilled}.";
    }
}
