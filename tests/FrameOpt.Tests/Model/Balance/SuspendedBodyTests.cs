using CsCheck;

namespace FrameOpt.Tests.Model.Balance;

/// <summary>The balance against plain vector sums of arm x force: laws of statics, no figures.</summary>
public class SuspendedBodyTests
{
    private const string Because = "arithmetic only: two ways to the same sum, relative to the size of its terms";

    [Fact]
    public void Roll_and_yaw_moments_are_the_vector_sum_of_arm_times_force() => HangCase.Any.Sample(
        hang =>
        {
            var forces = hang.Forces;
            var offset = hang.Geometry.OffsetMetres;
            Check.Close(forces.Moment.X, hang.Body.Moments.Roll.At(offset), absolute: 1e-12 * forces.Scale, because: Because);
            Check.Close(forces.Moment.Z, hang.Body.Moments.Yaw.At(offset), absolute: 1e-12 * forces.Scale, because: Because);
        },
        iter: 500);

    [Fact]
    public void No_pitching_moment_is_left_at_the_pitch_found() => HangCase.Any.Sample(
        hang => Check.Close(0, hang.Forces.Moment.Y, absolute: 1e-12 * hang.Forces.Scale, because: Because), iter: 500);

    // The side force of a turned thrust line is left to the bank of the wing, as the model says; the rest is the riser load.
    [Fact]
    public void Riser_load_is_the_size_of_the_sum_of_forces_in_the_plane_of_symmetry() => HangCase.Any.Sample(
        hang =>
        {
            var (forces, lean) = (hang.Forces, hang.Body.Load.LeanRadians);
            var inPlane = forces.Force with { Y = 0 };
            var scale = forces.Weight.Magnitude + forces.Drag.Magnitude + forces.Thrust.Magnitude;
            Check.Close(inPlane.Magnitude, hang.Body.Load.Newtons, absolute: 1e-12 * scale, because: Because);
            Check.Close(0, inPlane.X * Math.Cos(lean) - inPlane.Z * Math.Sin(lean), absolute: 1e-12 * scale, because: Because);
        },
        iter: 500);

    // The pitch found is the one the body returns to: a little more nose up, and the moment is nose down.
    [Fact]
    public void Body_returns_to_the_pitch_found() => HangCase.Any.Sample(
        hang =>
        {
            var forces = hang.Forces;
            Vec noseUp = new(0, 1, 0);
            var change = Vec.Cross(Vec.Cross(noseUp, forces.WeightArm), forces.Weight)
                + Vec.Cross(Vec.Cross(noseUp, forces.DragArm), forces.Drag);
            Assert.True(change.Y < 0);
            Assert.True(forces.WeightArm.Z > 0);
        },
        iter: 500);
}
