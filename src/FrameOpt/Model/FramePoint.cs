namespace FrameOpt.Model;

/// <summary>A point on the frame, in metres from a datum the builder chooses. Only differences of position matter.</summary>
/// <param name="ForwardMetres">Towards where the pilot looks.</param>
/// <param name="RightMetres">Towards the pilot's right.</param>
/// <param name="UpMetres">Upward with the pilot standing.</param>
public readonly record struct FramePoint(double ForwardMetres, double RightMetres, double UpMetres);
