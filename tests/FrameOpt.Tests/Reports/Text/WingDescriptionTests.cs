using FrameOpt.Model;
using FrameOpt.Reports.Text;
using FrameOpt.Tests.Model;

namespace FrameOpt.Tests.Reports.Text;

/// <summary>The wing's least certain numbers and the phases as the report writes them back.</summary>
public class WingDescriptionTests
{
    public static TheoryData<YawLeverage, string> Leverages => new()
    {
        { new YawLeverage.Constant(0.6), "0.6 in every phase" },
        { new YawLeverage.FromSpeed(0.17, 0.5), "0.17 s/m times the airspeed, less the wing's twist (twist share 0.5)" },
        {
            new YawLeverage.FromSideslip(-0.667, 0.32, 1),
            "from a sideslip (roll -0.667, yaw 0.32 per radian), less the wing's twist (twist share 1)"
        },
    };

    [Theory]
    [MemberData(nameof(Leverages))]
    public void Yaw_leverage_is_written_as_the_study_gives_it(YawLeverage leverage, string words) =>
        Assert.Equal(words, Row(WorkedMachine.Wing with { YawLeverage = leverage }, "yaw leverage"));

    [Fact]
    public void Riser_coupling_says_how_it_depends_on_the_spacing()
    {
        Assert.StartsWith("330 mm at a spacing of 440 mm", Row(WorkedMachine.Wing, "riser coupling"));
        Assert.StartsWith("from the geometry of the lines", Of(new RiserCoupling.FromLines()));
        Assert.Equal("50 mm at every spacing", Of(RiserCoupling.Soft));

        static string Of(RiserCoupling coupling) => Row(WorkedMachine.Wing with { RiserCoupling = coupling }, "riser coupling");
    }

    private static string Row(Wing wing, string what) => MachineDescription.Of(wing).Single(row => row.Label == what).Value;
}
