using FrameOpt.Model;
using FrameOpt.Model.Balance;

namespace FrameOpt.Tests.Model.Balance;

/// <summary>How the risers hold the body, against the exact geometry of two lines that do not stretch.</summary>
public class SuspensionTests
{
    // Source: worked by hand from K = W d² / 4 h and a thin bar's m l² / 12: bar 2.0 kg, 1.0 m, threads 0.6 m apart and 1.5 m long, g 9.81.
    [Fact]
    public void Bifilar_bar_has_its_stiffness_and_period()
    {
        var threads = WorkedMachine.Wing with { LineLengthMetres = 1.5, LineSpreadMetres = 0.6 };
        var stiffness = 2.0 * 9.81 * RiserStiffness.YawMetres(threads, 0.6);
        Check.Close(1.17720, stiffness, absolute: 5e-6, because: "printed digits");
        Check.Close(2.36417, 2 * Math.PI * Math.Sqrt(2.0 * 1.0 / 12 / stiffness), absolute: 5e-6, because: "printed digits");
    }

    // Law: two lines keep their length, so a body twisted by psi rises, and the moment is the load times the rise per radian.
    [Theory]
    [InlineData(0.38)]
    [InlineData(0.44)]
    [InlineData(0.48)]
    public void Yaw_moment_of_the_risers_is_that_of_two_lines_that_keep_their_length(double spacing)
    {
        const double load = 1000, twist = 20 * Math.PI / 180, step = 1e-4;
        var wing = WorkedMachine.Wing;
        double below = spacing / 2, above = wing.LineSpreadMetres / 2;
        var length = Math.Sqrt(Math.Pow(wing.LineLengthMetres, 2) + Math.Pow(above - below, 2));
        double Height(double psi)
        {
            double sideways = above - below * Math.Cos(psi), along = below * Math.Sin(psi);
            return Math.Sqrt(length * length - sideways * sideways - along * along);
        }

        var exact = load * (Height(twist - step) - Height(twist + step)) / (2 * step);
        Check.Close(
            exact,
            load * RiserStiffness.YawMetres(wing, spacing) * Math.Sin(twist),
            relative: 6e-4,
            because: "the formula keeps the vertical distance, which shrinks by about 5e-4 at 20 degrees");
    }

    // Law: a bar on two lines to a wing that stays level is a four-bar linkage; rolled a little, its middle rises by c phi² / 2.
    [Theory]
    [InlineData(0.38)]
    [InlineData(0.43)]
    [InlineData(0.60)]
    public void Riser_coupling_from_lines_is_the_rise_of_a_bar_on_two_lines(double spacing)
    {
        var wing = WorkedMachine.Wing with { RiserCoupling = new RiserCoupling.FromLines() };
        const double roll = 0.01;
        var rise = wing.LineLengthMetres - DepthOfRolledBar(wing.LineLengthMetres, wing.LineSpreadMetres, spacing, roll);
        Check.Close(
            2 * rise / (roll * roll),
            RiserStiffness.RollMetres(wing, spacing),
            relative: 1e-4,
            because: "terms of the fourth order in a roll of 0.01 rad");
    }

    // Source: worked by hand for lines 7 m, spread 3.8 m, spacing 0.43 m: 7 x 0.1849 / 3.37² + 0.43 x 3.8 / 28 = 0.1140 + 0.0584.
    [Fact]
    public void Riser_coupling_from_lines_is_about_170_millimetres_on_the_worked_wing() => Check.Close(
        0.172,
        RiserStiffness.RollMetres(WorkedMachine.Wing with { RiserCoupling = new RiserCoupling.FromLines() }, 0.43),
        absolute: 5e-4,
        because: "three printed digits");

    // Found by a random study: hang points 1e-11 m nearer together than the lines gave a wing roll moment of 1e26 N·m.
    [Theory]
    [InlineData(0.94, true)]
    [InlineData(0.96, false)]
    [InlineData(1, false)]
    [InlineData(1.2, false)]
    public void Hang_points_as_far_apart_as_the_lines_have_no_riser_coupling(double share, bool hasCoupling)
    {
        var wing = WorkedMachine.Wing with { RiserCoupling = new RiserCoupling.FromLines() };
        Assert.Equal(hasCoupling, double.IsFinite(RiserStiffness.RollMetres(wing, share * wing.LineSpreadMetres)));
    }

    // Law: a measured length goes with the square of the spacing.
    [Fact]
    public void Measured_riser_coupling_is_kept_at_its_own_spacing_and_doubles_at_1_41_times_it()
    {
        Check.Close(0.33, RiserStiffness.RollMetres(WorkedMachine.Wing, 0.44), relative: 1e-15, because: "arithmetic only");
        Check.Close(0.66, RiserStiffness.RollMetres(WorkedMachine.Wing, 0.44 * Math.Sqrt(2)), relative: 1e-15, because: "arithmetic only");
    }

    /// <summary>Depth of the bar's middle below the level wing, both lines at their length; Newton's method on the two line
    /// lengths.</summary>
    private static double DepthOfRolledBar(double depth, double spread, double spacing, double roll)
    {
        var square = depth * depth + Math.Pow((spread - spacing) / 2, 2);
        double x = 0, z = depth;
        for (var i = 0; i < 30; i++)
        {
            double rightX = x + spacing / 2 * Math.Cos(roll) - spread / 2, rightZ = z + spacing / 2 * Math.Sin(roll);
            double leftX = x - spacing / 2 * Math.Cos(roll) + spread / 2, leftZ = z - spacing / 2 * Math.Sin(roll);
            double right = rightX * rightX + rightZ * rightZ - square, left = leftX * leftX + leftZ * leftZ - square;
            var determinant = 4 * (rightX * leftZ - leftX * rightZ);
            x -= (2 * leftZ * right - 2 * rightZ * left) / determinant;
            z -= (2 * rightX * left - 2 * leftX * right) / determinant;
        }

        return z;
    }
}
