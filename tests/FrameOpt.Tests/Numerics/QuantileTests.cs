using FrameOpt.Numerics;

namespace FrameOpt.Tests.Numerics;

/// <summary>Tables worked out by separate programs outside this project, and the closed forms that some degrees of freedom have.</summary>
public class QuantileTests
{
    private const string Printed = "twelve or thirteen printed digits";
    private const string Closed = "a closed form, to rounding";

    /// <summary>The table is not right to its last digits: at five degrees it is 3e-10 off the closed form below.</summary>
    [Theory]
    [InlineData(2.015048372669, 0.95, 5)]
    [InlineData(2.228138851965, 0.975, 10)]
    [InlineData(2.845339709777, 0.995, 20)]
    public void Student_agrees_with_the_table_as_far_as_the_table_is_right(double expected, double probability, double degrees)
    {
        Check.Close(expected, Quantile.Student(probability, degrees), relative: 4e-10, because: "the table itself is off by so much");
        Check.Close(-expected, Quantile.Student(1 - probability, degrees), relative: 4e-10, because: "the table itself is off by so much");
    }

    /// <summary>Source: Abramowitz and Stegun 1964, 26.7.3 and 26.7.4 (from memory): P(|t| under v) is finite in sine and cosine of
    /// atan(v/√degrees).</summary>
    [Theory]
    [InlineData(0.95, 1)]
    [InlineData(0.99999, 1)]
    [InlineData(0.6, 2)]
    [InlineData(0.95, 5)]
    [InlineData(0.975, 10)]
    [InlineData(0.995, 20)]
    public void Student_agrees_with_its_closed_form(double probability, int degrees)
    {
        var value = Quantile.Student(probability, degrees);
        Check.Close((2 * probability) - 1, Within(value, degrees), absolute: 1e-14, because: Closed);
        Check.Close(2 * (1 - probability), UpperTail.StudentTwoSided(value, degrees), relative: 1e-12,
            because: "rounding of the exponential");
        Check.Close(-value, Quantile.Student(1 - probability, degrees), relative: 1e-10, because: "1 - p is rounded");
    }

    [Theory]
    [InlineData(161.447638797588, 0.95, 1, 1)]
    [InlineData(4.102821015130, 0.95, 2, 10)]
    [InlineData(3.325834530413, 0.95, 5, 10)]
    [InlineData(5.952544681546, 0.99, 3, 12)]
    public void F_agrees_with_the_table(double expected, double probability, double above, double below)
    {
        Check.Close(expected, Quantile.F(probability, above, below), relative: 1e-12, because: Printed);
        Check.Close(1 - probability, UpperTail.F(expected, above, below), relative: 1e-11, because: Printed);
    }

    /// <summary>With two degrees above, P(F > x) = (1 + 2x/d)^(-d/2); with one and one, √F is Cauchy's: tan².</summary>
    [Theory]
    [InlineData(0.6)]
    [InlineData(0.99)]
    [InlineData(0.999999)]
    public void F_agrees_with_its_closed_forms_far_out_too(double probability)
    {
        Check.Close(5 * (Math.Pow(1 - probability, -0.2) - 1), Quantile.F(probability, 2, 10), relative: 1e-12, because: Closed);
        Check.Close(Math.Pow(Math.Tan(Math.PI * probability / 2), 2), Quantile.F(probability, 1, 1), relative: 1e-9,
            because: "the tangent magnifies the rounding of p");
    }

    [Theory]
    [InlineData(3.841458820694, 0.95, 1)]
    [InlineData(18.307038053275, 0.95, 10)]
    [InlineData(3.940299136119, 0.05, 10)]
    public void Chi_square_agrees_with_the_table(double expected, double probability, double degrees)
    {
        Check.Close(expected, Quantile.ChiSquare(probability, degrees), relative: 1e-12, because: Printed);
        Check.Close(1 - probability, UpperTail.ChiSquare(expected, degrees), relative: 1e-11, because: Printed);
    }

    [Fact]
    public void Normal_agrees_with_the_table()
    {
        Check.Close(1.959963984540, Quantile.Normal(0.975), relative: 1e-12, because: Printed);
        Check.Close(2.575829303549, Quantile.Normal(0.995), relative: 1e-12, because: Printed);
    }

    /// <summary>Student's t of 1 degree is Cauchy's: P(|t| > v) = 1 - 2 atan(v)/π, about 2/(π v) far out.</summary>
    [Fact]
    public void Small_probabilities_keep_their_digits() =>
        Check.Close(2 / (Math.PI * 1e9), UpperTail.StudentTwoSided(1e9, 1), relative: 1e-12,
            because: "the next term of the series is 1e-18 of it");

    private static double Within(double value, int degrees)
    {
        var angle = Math.Atan(value / Math.Sqrt(degrees));
        var (sine, cosine) = Math.SinCos(angle);
        var odd = degrees % 2 == 1;
        double term = odd ? cosine : 1, sum = degrees == 1 ? 0 : term;
        for (var k = odd ? 3 : 2; k < degrees - 1; k += 2)
        {
            term *= cosine * cosine * (k - 1) / k;
            sum += term;
        }

        return odd ? 2 / Math.PI * (angle + (sine * sum)) : sine * sum;
    }
}
