using FrameOpt.Model;

namespace FrameOpt.Tests.Model;

public class AtmosphereTests
{
    // Source: constants of ISO 2533:1975 (g0 9.80665, 6.5 K/km, R 287.05287), values computed from them outside this code;
    // they agree with the tables of the US Standard Atmosphere 1976 as remembered.
    [Theory]
    [InlineData(0, 288.150, 101325.00, 1.225000)]
    [InlineData(500, 284.900, 95460.84, 1.167269)]
    [InlineData(1000, 281.650, 89874.56, 1.111643)]
    [InlineData(1500, 278.400, 84555.99, 1.058067)]
    [InlineData(2000, 275.150, 79495.20, 1.006490)]
    [InlineData(3000, 268.650, 70108.53, 0.909122)]
    public void Standard_day_agrees_with_the_standard(double altitude, double kelvin, double pascals, double density)
    {
        const string digits = "half of the last printed digit";
        Check.Close(kelvin, Atmosphere.TemperatureKelvin(altitude, 0), absolute: 0.5e-3, because: digits);
        Check.Close(pascals, Atmosphere.PressurePascals(altitude), absolute: 0.5e-2, because: digits);
        Check.Close(density, Atmosphere.DensityKgPerM3(altitude, 0), absolute: 0.5e-6, because: digits);
    }

    // Source: US Standard Atmosphere 1976, 11 km geopotential: 226.32 hPa and 0.36392 kg/m³, from memory.
    [Fact]
    public void Top_of_the_troposphere_agrees_with_the_printed_table()
    {
        Check.Close(22632, Atmosphere.PressurePascals(11_000), absolute: 1, because: "five printed digits");
        Check.Close(0.36392, Atmosphere.DensityKgPerM3(11_000, 0), absolute: 1e-5, because: "five printed digits");
    }

    [Fact]
    public void Sea_level_density_is_that_of_the_formula() =>
        Check.Close(Atmosphere.SeaLevelDensityKgPerM3, Atmosphere.DensityKgPerM3(0, 0), absolute: 0.5e-6,
            because: "the standard rounds it to 1.225");

    // Law: at one pressure, density goes as 1/T.
    [Fact]
    public void Warm_day_thins_the_air_in_proportion_to_absolute_temperature()
    {
        var standard = Atmosphere.DensityKgPerM3(1500, 0);
        Check.Close(standard * 278.4 / 298.4, Atmosphere.DensityKgPerM3(1500, 20), relative: 1e-12, because: "arithmetic only");
    }

    [Theory]
    [InlineData(-2001)]
    [InlineData(11_001)]
    [InlineData(double.NaN)]
    public void Altitude_outside_the_troposphere_has_no_value(double altitude) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Atmosphere.DensityKgPerM3(altitude, 0));
}
