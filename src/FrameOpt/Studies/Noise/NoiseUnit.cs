namespace FrameOpt.Studies.Noise;

/// <summary>What a deviation is measured in.</summary>
public enum NoiseUnit
{
    /// <summary>m.</summary>
    Length,

    /// <summary>rad.</summary>
    Angle,

    /// <summary>A share of the study's value.</summary>
    Share,

    /// <summary>K.</summary>
    Temperature,

    /// <summary>From the low end of the model's range (-1) to the high end (+1).</summary>
    Range,
}
