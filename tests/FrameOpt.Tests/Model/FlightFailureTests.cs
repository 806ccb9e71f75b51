using FrameOpt.Model;
using FrameOpt.Tests.Model.Mission;

namespace FrameOpt.Tests.Model;

public class FlightFailureTests
{
    [Fact]
    public void Failure_code_gives_back_kind_and_phase()
    {
        Assert.Equal(0, FlightFailure.None.Code);
        foreach (var kind in Enum.GetValues<FailureKind>().Where(kind => kind != FailureKind.None))
        {
            for (var phase = 0; phase < 40; phase++)
                Assert.Equal(new FlightFailure(kind, phase), FlightFailure.FromCode(new FlightFailure(kind, phase).Code));
        }
    }

    // Statics, no source needed: with the hang points 50 mm below the centre of gravity the weight turns the body over.
    [Fact]
    public void Body_hung_below_its_centre_of_gravity_turns_over() =>
        Assert.Equal(FailureKind.TurnedOver, HungBelow(0).Design.Failure?.Cause.Kind);

    // The same body with its drag far behind: 0.6 kg/m³ x (10 m/s)² x 0.4 m² x 3 m is more than 922 N x 0.05 m, so it is held in
    // pitch. No drag holds it in roll.
    [Fact]
    public void Body_that_only_its_drag_holds_in_pitch_is_not_stable_in_roll() =>
        Assert.Equal(FailureKind.Unstable, HungBelow(0.4).Design.Failure?.Cause.Kind);

    private static HandMachine HungBelow(double dragArea) => new()
    {
        Height = -0.05,
        HubUp = -0.05,
        DragArea = dragArea,
        DragCentre = new FramePoint(-3, 0, -0.05),
    };
}
