using FrameOpt.StudyFile.Values;

namespace FrameOpt.Tests.StudyFile.Values;

public sealed class OtherUnitTests
{
    /// <summary>NIST Special Publication 811, appendix B.8: 1 lb = 0.4535924 kg, 1 in = 25.4 mm, 1 kgf = 9.80665 N, 1 hp (550 ft·lbf/s) =
    /// 745.6999 W, 1 km/h = 0.2777778 m/s; from memory.</summary>
    [Theory]
    [InlineData("76 kg", "167.6 lb")]
    [InlineData("100 lb", "45.36 kg")]
    [InlineData("254 mm", "10 in")]
    [InlineData("60 kgf", "588.4 N")]
    [InlineData("10 kW", "13.41 hp")]
    [InlineData("36 km/h", "10 m/s")]
    [InlineData("2600 rpm", "")]
    [InlineData("24 m²", "")]
    [InlineData("no number", "")]
    [InlineData("7", "")]
    public void A_quantity_is_said_in_the_other_usual_unit(string written, string expected) =>
        Assert.Equal(expected, OtherUnit.Of(written));
}
