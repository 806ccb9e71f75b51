namespace FrameOpt.Search;

/// <summary>An objective of a search.</summary>
/// <param name="Name">As the study writes it.</param>
/// <param name="Maximise">True when more is better.</param>
public sealed record Goal(string Name, bool Maximise)
{
    /// <summary>A raw value turned so that less is better, and back.</summary>
    public double Oriented(double value) => Maximise ? -value : value;
}
