using FrameOpt.Numerics;

namespace FrameOpt.Model.Balance;

/// <summary>How the two risers hold the body against the wing, for each newton they carry.</summary>
public static class RiserStiffness
{
    /// <summary>How much narrower than the line spread a spacing must be, as a share of it. Nearer, the two-line geometry makes the
    /// risers stiffer than any cloth (beyond 400 line lengths) and the solution of the balance loses its digits.</summary>
    private const double LeastSpread = 0.05;

    /// <summary>c_phi in metres at a spacing: roll stiffness over riser load.</summary>
    /// <returns>NaN when the spacing comes within a twentieth of the line spread: the lines no longer spread outwards.</returns>
    /// <remarks>Source: measured length scaled with s²; else a rigid wing on two line centroids,
    /// c = L s² / (b_top - s)² + s b_top / 4 L (own two-line geometry: an assumption, range 0.05 to 1 m).</remarks>
    public static double RollMetres(Wing wing, double spacingMetres) => RollMetres(wing, wing.RiserCoupling, spacingMetres);

    private static double RollMetres(Wing wing, RiserCoupling coupling, double spacingMetres)
    {
        switch (coupling)
        {
            case RiserCoupling.Measured measured:
                var ratio = spacingMetres / measured.AtSpacingMetres;
                return measured.LengthMetres * ratio * ratio;
            case RiserCoupling.Constant constant:
                return constant.LengthMetres;
            case RiserCoupling.FromLines:
                var spread = wing.LineSpreadMetres - spacingMetres;
                return spread > LeastSpread * wing.LineSpreadMetres
                    ? wing.LineLengthMetres * spacingMetres * spacingMetres / (spread * spread)
                        + spacingMetres * wing.LineSpreadMetres / (4 * wing.LineLengthMetres)
                    : double.NaN;
            case RiserCoupling.Between between:
                var begin = RollMetres(wing, between.From, spacingMetres);
                return begin * Elementary.Pow(between.EndMetres / begin, between.Share);
            default:
                throw new InvalidOperationException();
        }
    }

    /// <summary>Yaw stiffness over riser load, m/rad: a body on two lines.</summary>
    /// <remarks>Source: bifilar suspension, K = W d1 d2 / 4 h for small angles.</remarks>
    public static double YawMetres(Wing wing, double spacingMetres) =>
        spacingMetres * wing.LineSpreadMetres / (4 * wing.LineLengthMetres);
}
