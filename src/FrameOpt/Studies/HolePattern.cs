using FrameOpt.Model;

namespace FrameOpt.Studies;

/// <summary>The holes that a frame has, or may get: each hang point sits in one of its side; spacing and lateral offset follow.</summary>
/// <param name="Left">On the pilot's left.</param>
/// <param name="Right">On the pilot's right.</param>
/// <param name="Unit">The unit the user typed.</param>
public sealed record HolePattern(HoleRow Left, HoleRow Right, DisplayUnit Unit)
{
    /// <summary>Sums and differences are rounded to so many decimals of a metre, so that the same spacing is the same number.</summary>
    private const int Decimals = 12;

    /// <summary>How many pairs of a left and a right hole there are.</summary>
    public int Pairs => Left.Places.Count * Right.Places.Count;

    /// <summary>True for the inputs that a pair of holes decides.</summary>
    public static bool Decides(GeometryInput input) => input == GeometryInput.HangPointSpacing || input == GeometryInput.LateralOffset;

    /// <summary>A geometry with its hang points in two holes.</summary>
    /// <param name="geometry">For everything else.</param>
    /// <param name="left">From the plane of symmetry to the left hole, m, above 0.</param>
    /// <param name="right">To the right hole.</param>
    public static FrameGeometry Put(in FrameGeometry geometry, double left, double right) => geometry with
    {
        SpacingMetres = Math.Round(left + right, Decimals),
        OffsetMetres = Math.Round((right - left) / 2, Decimals),
    };

    /// <summary>The pair of holes nearest to the hang points of a geometry.</summary>
    public FrameGeometry Nearest(in FrameGeometry geometry) => Put(
        geometry, Left.Nearest(geometry.LeftMetres), Right.Nearest(geometry.RightMetres));

    /// <summary>All that the holes make of a spacing or an offset, as a factor of the study.</summary>
    public StudyFactor Factor(GeometryInput input) => new(
        input,
        [.. Left.Places.SelectMany(left => Right.Places.Select(right => Put(default, left, right)[input])).Distinct().Order()],
        Unit);
}

/// <summary>The holes of one side.</summary>
/// <param name="Places">From the plane of symmetry, m, increasing, above 0; one or more.</param>
/// <param name="Drilled">Those of them that are there already; null when the study does not say.</param>
public sealed record HoleRow(IReadOnlyList<double> Places, IReadOnlyList<double>? Drilled)
{
    /// <summary>A hole is meant when a place is this near to it, m: far below what can be drilled.</summary>
    private const double Same = 1e-9;

    /// <summary>The hole at a place, from 0; null when there is none.</summary>
    public int? IndexOf(double metres) =>
        Places.Index().Where(hole => Math.Abs(hole.Item - metres) < Same).Select(hole => (int?)hole.Index).FirstOrDefault();

    /// <summary>True when the study says that this hole is there.</summary>
    public bool IsDrilled(int hole) => Drilled?.Any(there => Math.Abs(there - Places[hole]) < Same) == true;

    /// <summary>The hole nearest to a place.</summary>
    public double Nearest(double metres) => Places.MinBy(place => Math.Abs(place - metres));
}
