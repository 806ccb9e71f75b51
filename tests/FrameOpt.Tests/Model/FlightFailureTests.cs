using FrameOpt.Model;

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
}
