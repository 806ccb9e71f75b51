namespace FrameOpt.Model.Mission;

/// <summary>What two scales read when frame and pilot hang, engine off, from a rigid beam by two equal parallel straps, which hold the
/// frame's own straps or carabiners.</summary>
/// <param name="RightNewtons">The scale on the pilot's right.</param>
/// <param name="LeftNewtons">The scale on the pilot's left.</param>
/// <param name="PerFiveMillimetresNewtons">How far the difference moves for 5 mm of unequal strap length, about.</param>
/// <param name="PerSeatMillimetreNewtons">How far the difference moves for 1 mm that the pilot's body sits to the side.</param>
public sealed record HangCheck(
    double RightNewtons, double LeftNewtons, double PerFiveMillimetresNewtons, double PerSeatMillimetreNewtons)
{
    /// <summary>Right less left.</summary>
    public double DifferenceNewtons => RightNewtons - LeftNewtons;

    /// <summary>What both scales add up to: all that hangs.</summary>
    public double TotalNewtons => RightNewtons + LeftNewtons;

    /// <summary>The readings to expect: half the weight each, more or less the moment of the offset over the spacing.</summary>
    /// <remarks>Source: statics of a beam on two supports; W h d / s² each way for a difference d in strap length or in height of the
    /// hang points, because the body then hangs at a roll of d / s; the body's m g d / s each way for a shift d.</remarks>
    public static HangCheck Of(Machine machine, FrameGeometry geometry)
    {
        var weight = machine.MassKilograms * Constants.StandardGravity;
        var height = geometry.HeightMetres - machine.CentreOfGravity.UpMetres;
        var roll = (geometry.HangHeightDifferenceMetres + geometry.StrapDifferenceMetres) / geometry.SpacingMetres;
        var arm = machine.CentreOfGravity.RightMetres - geometry.OffsetMetres - height * roll;
        var half = weight * arm / geometry.SpacingMetres;
        var strap = 2 * weight * height * 0.005 / (geometry.SpacingMetres * geometry.SpacingMetres);
        var seat = 2 * machine.BodyMassKilograms * Constants.StandardGravity * 0.001 / geometry.SpacingMetres;
        return new HangCheck(weight / 2 + half, weight / 2 - half, strap, seat);
    }
}
