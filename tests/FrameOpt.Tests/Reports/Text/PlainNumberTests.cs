using System.Globalization;
using CsCheck;
using FrameOpt.Reports.Text;

namespace FrameOpt.Tests.Reports.Text;

public class PlainNumberTests
{
    [Theory]
    [InlineData(1e-5, "0.00001")]
    [InlineData(-2.5e-7, "-0.00000025")]
    [InlineData(1e21, "1000000000000000000000")]
    [InlineData(-1.25e17, "-125000000000000000")]
    [InlineData(0.1, "0.1")]
    [InlineData(-0.0, "0")]
    public void A_number_is_written_as_a_plain_decimal(double value, string expected) => Assert.Equal(expected, PlainNumber.Text(value));

    [Fact]
    public void Every_finite_number_reads_back_the_same_and_has_no_exponent() => Gen.Double.Where(double.IsFinite).Sample(value =>
    {
        var text = PlainNumber.Text(value);
        Assert.DoesNotContain('E', text);
        Assert.Equal(value, double.Parse(text, CultureInfo.InvariantCulture));
    });

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void What_is_not_finite_has_no_decimal_text(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PlainNumber.Text(value));
}
