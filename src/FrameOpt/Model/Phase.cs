namespace FrameOpt.Model;

/// <summary>One steady phase of a mission.</summary>
/// <param name="Name">The study's word for it.</param>
/// <param name="Weight">Its share in weighted responses; 0 shows it without counting it.</param>
/// <param name="Speed">Fraction of the speed range, or an airspeed.</param>
/// <param name="Power">What the engine does.</param>
/// <param name="AltitudeMetres">Geopotential altitude in the standard atmosphere.</param>
/// <param name="TemperatureOffsetKelvin">Warmer than the standard day, +.</param>
/// <param name="LoadFactor">n, above 0.</param>
/// <param name="CarriedShare">Share c of the weight carried by the risers, above 0 to 1.</param>
/// <param name="PitchRateRadiansPerSecond">q, nose up +; for the gyroscopic moment.</param>
public sealed record Phase(
    string Name,
    double Weight,
    FlightSpeed Speed,
    PhasePower Power,
    double AltitudeMetres = 0,
    double TemperatureOffsetKelvin = 0,
    double LoadFactor = 1,
    double CarriedShare = 1,
    double PitchRateRadiansPerSecond = 0);
