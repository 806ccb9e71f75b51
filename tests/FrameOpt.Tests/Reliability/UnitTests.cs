using CsCheck;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.Tests.Reliability;

/// <summary>A value written in any unit is read back as itself.</summary>
public class UnitTests
{
    // Exact by definition: the international inch and pound (1959), standard gravity (ISO 80000-3), the nautical mile of 1852 m.
    // One hp is as docs/study-file.md says.
    public static TheoryData<string, string, double> Units => new()
    {
        { "length", "mm", 1e-3 }, { "length", "cm", 1e-2 }, { "length", "m", 1 }, { "length", "in", 0.0254 }, { "length", "ft", 0.3048 },
        { "mass", "kg", 1 }, { "mass", "g", 1e-3 }, { "mass", "lb", 0.45359237 },
        { "force", "N", 1 }, { "force", "kN", 1e3 }, { "force", "kgf", 9.80665 }, { "force", "lbf", 0.45359237 * 9.80665 },
        { "torque", "N·m", 1 }, { "angle", "deg", Math.PI / 180 }, { "angle", "°", Math.PI / 180 }, { "angle", "rad", 1 },
        { "rotational speed", "rpm", 1 }, { "angular rate", "rad/s", 1 }, { "angular rate", "deg/s", Math.PI / 180 },
        { "speed", "m/s", 1 }, { "speed", "km/h", 1 / 3.6 }, { "speed", "kt", 1852.0 / 3600 },
        { "density", "kg/m³", 1 }, { "density", "kg/l", 1e3 }, { "power", "kW", 1e3 }, { "power", "hp", 745.69 },
        { "volume", "l", 1e-3 }, { "temperature difference", "K", 1 }, { "temperature difference", "°C", 1 },
        { "time", "s", 1 }, { "time", "min", 60 }, { "time", "h", 3600 }, { "share", "%", 0.01 }, { "area", "m²", 1 },
    };

    [Theory]
    [MemberData(nameof(Units))]
    public void Value_in_a_unit_is_read_as_what_it_is(string dimension, string unit, double factor)
    {
        var of = Dimension.All.Single(one => one.Name == $"a {dimension}" || one.Name == $"an {dimension}");
        Gen.Select(Gen.Double[0.1, 1], Gen.Int[-6, 6]).Sample((digits, power) =>
        {
            var value = digits * Math.Pow(10, power);
            var written = FormattableString.Invariant($"{value / factor:R} {unit}");
            var parsed = NumberText.Parse(written);
            Assert.Null(parsed.Message);
            Check.Close(value, of.FindUnit(parsed.Unit)!.ToBase(parsed.Value), relative: 1e-14,
                because: "UnitsNet keeps powers to fifteen digits");
        }, iter: Math.Max(1000, Cases.OfNumbers / 34));
    }
}
