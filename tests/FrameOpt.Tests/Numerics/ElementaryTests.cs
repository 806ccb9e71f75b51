using FrameOpt.Numerics;
using FrameOpt.Tests.Architecture;

namespace FrameOpt.Tests.Numerics;

/// <summary>Elementary functions give the nearest double, so the last digit is the same on every system and in a browser.</summary>
public class ElementaryTests
{
    private static readonly string[] ofTheSystem =
        ["Sin", "Cos", "SinCos", "Tan", "Asin", "Acos", "Atan", "Atan2", "Sinh", "Cosh", "Tanh", "Exp", "Log", "Log2", "Cbrt"];

    /// <summary>Function, arguments and the double nearest to the true value. Source: mpmath 1.3, 300 binary digits.</summary>
    public static TheoryData<string, double, double, double> Values => new()
    {
        { "sin", 1e-09, 0, 1e-09 },
        { "cos", 1e-09, 0, 1.0 },
        { "sin", 0.017453292519943295, 0, 0.01745240643728351 },
        { "cos", 0.017453292519943295, 0, 0.9998476951563913 },
        { "sin", 0.5235987755982989, 0, 0.5 },
        { "cos", 0.5235987755982989, 0, 0.8660254037844386 },
        { "sin", 0.7853981633974483, 0, 0.7071067811865475 },
        { "cos", 0.7853981633974483, 0, 0.7071067811865476 },
        { "sin", 1.5707963267948966, 0, 1.0 },
        { "cos", 1.5707963267948966, 0, 6.123233995736766e-17 },
        { "sin", -2.3, 0, -0.7457052121767203 },
        { "cos", -2.3, 0, -0.6662760212798241 },
        { "sin", 3.141592653589793, 0, 1.2246467991473532e-16 },
        { "cos", 3.141592653589793, 0, -1.0 },
        { "sin", 6.2, 0, -0.0830894028174964 },
        { "cos", 6.2, 0, 0.9965420970232175 },
        { "sin", 100.0, 0, -0.5063656411097588 },
        { "cos", 100.0, 0, 0.8623188722876839 },
        { "atan2", 0.1, 0.9, 0.11065722117389565 },
        { "atan2", -3.0, 0.002, -1.5701296602269954 },
        { "atan2", 1e-07, -1.0, 3.1415925535897933 },
        { "atan2", 2.5, 2.5, 0.7853981633974483 },
        { "atan2", -0.3, -7.0, -3.098761720921066 },
        { "exp", -40.0, 0, 4.248354255291589e-18 },
        { "exp", -0.3, 0, 0.7408182206817179 },
        { "exp", 1e-08, 0, 1.00000001 },
        { "exp", 0.5, 0, 1.6487212707001282 },
        { "exp", 1.0, 0, 2.718281828459045 },
        { "exp", 12.7, 0, 327747.9018738116 },
        { "exp", 300.0, 0, 1.9424263952412558e+130 },
        { "log", 1e-12, 0, -27.631021115928547 },
        { "log", 0.1, 0, -2.3025850929940455 },
        { "log", 0.9999999, 0, -1.0000000494736474e-07 },
        { "log", 1.0000001, 0, 9.999999505838704e-08 },
        { "log", 2.0, 0, 0.6931471805599453 },
        { "log", 123456.789, 0, 11.723646487185881 },
        { "pow", 1.25, 4.0, 2.44140625 },
        { "pow", 1.25, 5.0, 3.0517578125 },
        { "pow", 0.93, 5.2558761, 0.6828892601052551 },
        { "pow", 0.3, 0.047619047619047616, 0.944280480021092 },
        { "pow", 7.0, -2.5, 0.007713560673657699 },
        { "pow", 10.0, -3.0, 0.001 },
        { "pow", 2.0, 0.5, 1.4142135623730951 },
    };

    [Theory]
    [MemberData(nameof(Values))]
    public void A_value_is_the_double_nearest_to_the_true_one(string function, double first, double second, double expected) =>
        Assert.Equal(expected, function switch
        {
            "sin" => Elementary.Sin(first),
            "cos" => Elementary.Cos(first),
            "atan2" => Elementary.Atan2(first, second),
            "exp" => Elementary.Exp(first),
            "log" => Elementary.Log(first),
            _ => Elementary.Pow(first, second),
        });

    [Theory]
    [InlineData(0, 3, 0)]
    [InlineData(0, 0, 1)]
    [InlineData(5, 0, 1)]
    [InlineData(-2, 3, -8)]
    [InlineData(double.PositiveInfinity, -1, 0)]
    [InlineData(1e200, 2, double.PositiveInfinity)]
    public void At_the_edges_a_power_is_that_of_the_standard(double number, double power, double expected) =>
        Assert.Equal(expected, Elementary.Pow(number, power)); // IEEE 754-2019, 9.2.1, from memory

    [Fact]
    public void Angles_keep_their_quadrant_and_the_sign_of_zero()
    {
        Assert.Equal(Math.PI, Elementary.Atan2(0, -1));
        Assert.Equal(-Math.PI / 2, Elementary.Atan2(-1, 0));
        Assert.Equal(Math.PI / 2, Elementary.Asin(1));
        Assert.True(double.IsNaN(Elementary.Sin(double.NaN)));
    }

    [Fact]
    public void Nothing_that_is_shipped_asks_the_systems_library_for_them()
    {
        var uses = Shipped.Types.Where(type => Shipped.Outermost(type) != typeof(Elementary)).SelectMany(CallGraph.Of)
            .Where(use => use.Used == typeof(Math) && ofTheSystem.Contains(use.UsedMember))
            .Select(use => use.ToString()).Distinct().ToArray();
        Assert.True(uses.Length == 0,
            $"these differ in the last digit between systems, take {nameof(Elementary)}:\n{string.Join('\n', uses)}");
    }
}
