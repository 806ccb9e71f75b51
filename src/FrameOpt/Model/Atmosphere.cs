using FrameOpt.Numerics;

namespace FrameOpt.Model;

/// <summary>The standard atmosphere up to 11 km, with a temperature offset at the pressure of the standard day.</summary>
/// <remarks>Source: ISO 2533:1975, Standard Atmosphere (the same layer as US Standard Atmosphere 1976). Altitudes are
/// geopotential.</remarks>
public static class Atmosphere
{
    /// <summary>Density at sea level on a standard day [kg/m³].</summary>
    public const double SeaLevelDensityKgPerM3 = 1.225;

    /// <summary>Lowest altitude the formulas hold for [m].</summary>
    public const double LowestAltitudeMetres = -2000;

    /// <summary>Highest altitude the formulas hold for, the top of the troposphere [m].</summary>
    public const double HighestAltitudeMetres = 11_000;

    private const double SeaLevelTemperatureKelvin = 288.15;
    private const double SeaLevelPressurePascals = 101_325;
    private const double LapseKelvinPerMetre = 0.0065;
    private const double GasConstant = 287.05287;

    /// <summary>Air temperature [K].</summary>
    /// <param name="altitudeMetres">Geopotential altitude, -2000 to 11000 m.</param>
    /// <param name="offsetKelvin">Warmer (+) or colder (-) than the standard day [K].</param>
    /// <exception cref="ArgumentOutOfRangeException">The altitude lies outside the troposphere.</exception>
    /// <remarks>Source: ISO 2533:1975, T = T0 - L H.</remarks>
    public static double TemperatureKelvin(double altitudeMetres, double offsetKelvin) =>
        StandardTemperature(altitudeMetres) + offsetKelvin;

    /// <summary>Air pressure [Pa]; an offset of temperature leaves it unchanged.</summary>
    /// <param name="altitudeMetres">Geopotential altitude, -2000 to 11000 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The altitude lies outside the troposphere.</exception>
    /// <remarks>Source: ISO 2533:1975, p = p0 (T/T0)^(g/(R L)).</remarks>
    public static double PressurePascals(double altitudeMetres) =>
        SeaLevelPressurePascals * Elementary.Pow(
            StandardTemperature(altitudeMetres) / SeaLevelTemperatureKelvin,
            Constants.StandardGravity / (GasConstant * LapseKelvinPerMetre));

    /// <summary>Air density [kg/m³].</summary>
    /// <param name="altitudeMetres">Geopotential altitude, -2000 to 11000 m.</param>
    /// <param name="offsetKelvin">Warmer (+) or colder (-) than the standard day [K].</param>
    /// <exception cref="ArgumentOutOfRangeException">The altitude lies outside the troposphere.</exception>
    /// <remarks>Source: ideal gas, rho = p/(R T), constants of ISO 2533:1975.</remarks>
    public static double DensityKgPerM3(double altitudeMetres, double offsetKelvin) =>
        PressurePascals(altitudeMetres) / (GasConstant * TemperatureKelvin(altitudeMetres, offsetKelvin));

    private static double StandardTemperature(double altitudeMetres)
    {
        if (!(altitudeMetres is >= LowestAltitudeMetres and <= HighestAltitudeMetres))
            throw new ArgumentOutOfRangeException(nameof(altitudeMetres), altitudeMetres, "outside the troposphere");
        return SeaLevelTemperatureKelvin - LapseKelvinPerMetre * altitudeMetres;
    }
}

/// <summary>Constants of nature and of standards that more than one formula uses.</summary>
public static class Constants
{
    /// <summary>Standard gravity, m/s².</summary>
    /// <remarks>Source: ISO 80000-3; ISO 2533:1975.</remarks>
    public const double StandardGravity = 9.80665;

    /// <summary>Newtons in one kilogram-force.</summary>
    public const double NewtonsPerKilogramForce = StandardGravity;
}
