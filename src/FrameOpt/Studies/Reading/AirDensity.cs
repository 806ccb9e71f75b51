namespace FrameOpt.Studies.Reading;

/// <summary>What an air density can be.</summary>
internal static class AirDensity
{
    /// <summary>From about 11 km of the standard atmosphere to a very cold day at sea level.</summary>
    public static readonly Bound Bound = Reading.Bound.Between(0.3, 1.6, "0.3 kg/m³", "1.6 kg/m³");
}
