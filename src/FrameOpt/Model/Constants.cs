namespace FrameOpt.Model;

/// <summary>Constants of nature and of standards that more than one formula uses.</summary>
public static class Constants
{
    /// <summary>Standard gravity, m/s².</summary>
    /// <remarks>Source: ISO 80000-3; ISO 2533:1975.</remarks>
    public const double StandardGravity = 9.80665;

    /// <summary>Newtons in one kilogram-force.</summary>
    public const double NewtonsPerKilogramForce = StandardGravity;
}
