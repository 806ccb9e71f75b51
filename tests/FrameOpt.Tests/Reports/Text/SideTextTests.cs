using FrameOpt.Reports.Text;

namespace FrameOpt.Tests.Reports.Text;

/// <summary>Signs in words: positive is the pilot's right.</summary>
public class SideTextTests
{
    [Theory]
    [InlineData(5.6, "to the right")]
    [InlineData(-5.6, "to the left")]
    public void Lean_names_its_side(double millimetres, string side) => Assert.EndsWith($" mm {side}", SideText.Lean(millimetres));

    [Theory]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void Lean_without_bound_is_told_as_no_lean_at_all(double millimetres) =>
        Assert.Equal("no lean cures it", SideText.Lean(millimetres));

    [Fact]
    public void Lean_too_small_to_name_has_no_side() => Assert.Equal("no lean", SideText.Lean(0.01));
}
