using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Tests.Model.Derivation;

/// <summary>Sections 3 and 4 of docs/model.md: the body rolls and yaws against the risers, and the wing banks, until nothing is left
/// over.</summary>
/// <remarks>Two directions in the plane of symmetry matter: along the lines, down from the wing; and across them, forward.</remarks>
public sealed class RiserBalance
{
    private const double SmallAngle = 1e-5;
    private readonly SuspendedBody body;
    private readonly Vec alongLines;
    private readonly Vec acrossLines;
    private readonly double rollStiffness;

    public RiserBalance(SuspendedBody body)
    {
        this.body = body;
        Pitch = body.Pitch;
        (var force, Moment) = body.At(Pitch);
        var inPlane = new Vec(force.X, 0, force.Z);
        Load = inPlane.Magnitude;
        alongLines = 1 / Load * inPlane;
        acrossLines = Vec.Cross(new Vec(0, 1, 0), alongLines);
        rollStiffness = Load * WorkedNumbers.RiserCouplingLength * Math.Pow(body.Design.Spacing / WorkedNumbers.RiserCouplingSpacing, 2);
        YawStiffness = (MomentOfTwistedLines(SmallAngle) - MomentOfTwistedLines(-SmallAngle)) / (2 * SmallAngle);

        // One Newton step from the straight attitude: what is left over there, and how it changes with each of the three small angles.
        var columns = Enumerable.Range(0, 3)
            .Select(angle => (LeftOver(Only(angle, SmallAngle)) - LeftOver(Only(angle, -SmallAngle))) / (2 * SmallAngle));
        var angles = Matrix<double>.Build.DenseOfColumnVectors(columns).Solve(-LeftOver(Vector<double>.Build.Dense(3)));
        (Roll, Yaw, Bank) = (angles[0], angles[1], angles[2]);
        (WingRollMoment, WingYawMoment) = HeldByRisers(Roll, Yaw, Bank);
    }

    /// <summary>Of the body, nose up; all angles in radians.</summary>
    public double Pitch { get; }

    /// <summary>Of everything but the risers, about H, with the body neither rolled nor yawed, in N·m.</summary>
    public Vec Moment { get; }

    /// <summary>What both risers carry together, in N.</summary>
    public double Load { get; }

    /// <summary>By how much the hang points are ahead of the wing, as an angle.</summary>
    public double LineLean => Math.Atan2(alongLines.X, alongLines.Z);

    /// <summary>Of the body, right side down.</summary>
    public double Roll { get; }

    /// <summary>Of the body, nose right.</summary>
    public double Yaw { get; }

    /// <summary>Of the wing, right side down.</summary>
    public double Bank { get; }

    /// <summary>Of the body against the wing about the lines, nose right.</summary>
    public double Twist => WingYawMoment / YawStiffness;

    public double Spacing => body.Design.Spacing;

    /// <summary>Of the risers against twist, in N·m per radian.</summary>
    public double YawStiffness { get; }

    /// <summary>What reaches the wing about the direction across the lines, right side down, in N·m.</summary>
    public double WingRollMoment { get; }

    /// <summary>What reaches the wing about the lines, nose right, in N·m.</summary>
    public double WingYawMoment { get; }

    /// <summary>Pull in the right and the left riser in N: two forces at the two hang points that make the moments on the wing.</summary>
    public (double Right, double Left) Tensions
    {
        get
        {
            // Two pairs of one newton each. For roll: along the lines, down on the right and up on the left. For yaw: across them, forward
            // on the left and back on the right.
            Vec right = new(0, body.Design.Spacing / 2, 0), left = -right;
            var rollOfPair = Vec.Dot(acrossLines, Vec.Cross(right, alongLines) + Vec.Cross(left, -alongLines));
            var yawOfPair = Vec.Dot(alongLines, Vec.Cross(left, acrossLines) + Vec.Cross(right, -acrossLines));
            var difference = WingRollMoment / rollOfPair * alongLines + -WingYawMoment / yawOfPair * acrossLines;
            var half = Load / 2 * alongLines;
            return ((half + difference).Magnitude, (half - difference).Magnitude);
        }
    }

    private static Vector<double> Only(int angle, double value) => Vector<double>.Build.Dense(3, i => i == angle ? value : 0);

    /// <summary>For a roll, a yaw and a bank: the moments about the forward and the downward axis and the force to the right that nothing
    /// holds. In a phase that has not settled the bank itself takes the place of the force, because it must be zero.</summary>
    private Vector<double> LeftOver(Vector<double> angles)
    {
        var (roll, yaw, bank) = (angles[0], angles[1], angles[2]);
        var (force, moment) = body.At(Pitch, roll, yaw);
        var (wingRoll, wingYaw) = HeldByRisers(roll, yaw, bank);
        var held = moment - (wingRoll * acrossLines + wingYaw * alongLines);

        // The lines of a banked wing lean to the side and pull the hang points that way. A wing still overhead has no bank.
        var pull = -Load * (Math.Cos(bank) * alongLines + Math.Sin(bank) * Vec.Cross(acrossLines, alongLines));
        var side = body.Flight.Phase.Settled ? (force + pull).Y : bank;
        return Vector<double>.Build.Dense([held.X, held.Z, side]);
    }

    /// <summary>The turn against a level wing that a body neither rolled nor yawed already has between the upper ends of its straps: a
    /// longer one ends further up the lines. Right end down the lines is roll to the right, right end back across them is nose
    /// right.</summary>
    private Vec Unequal
    {
        get
        {
            var upperEnds = body.Design.Across.AboutY(Pitch) - 0.001 * body.Design.RightStrapLongerMillimetres * alongLines;
            return Vec.Dot(upperEnds, alongLines) / body.Design.Spacing * acrossLines
                + -Vec.Dot(upperEnds, acrossLines) / body.Design.Spacing * alongLines;
        }
    }

    /// <summary>The moments that roll and twist of the body against the wing put on the wing.</summary>
    private (double Roll, double Yaw) HeldByRisers(double roll, double yaw, double bank)
    {
        var againstWing = new Vec(roll, 0, yaw) - bank * acrossLines + Unequal;
        return (rollStiffness * Vec.Dot(againstWing, acrossLines), YawStiffness * Vec.Dot(againstWing, alongLines));
    }

    /// <summary>The moment by which two lines, each with half the load, turn a body back that is twisted below the wing.</summary>
    private double MomentOfTwistedLines(double twist)
    {
        var moment = new Vec(0, 0, 0);
        foreach (var side in new[] { -0.5, 0.5 })
        {
            var hangPoint = new Vec(0, side * body.Design.Spacing, 0).AboutZ(twist);
            var line = new Vec(0, side * WorkedNumbers.LineSpread, -WorkedNumbers.LineLength) - hangPoint;
            moment += Vec.Cross(hangPoint, Load / 2 / WorkedNumbers.LineLength * line);
        }

        return -moment.Z;
    }
}
