using FrameOpt.Model;

namespace FrameOpt.Studies;

/// <summary>A response with a bound.</summary>
/// <param name="Response">What is bounded.</param>
/// <param name="Magnitude">True when the size is bounded whatever the sign.</param>
/// <param name="AtLeast">Smallest value allowed, or null; in the response's unit.</param>
/// <param name="AtMost">Largest value allowed, or null; in the response's unit.</param>
public sealed record StudyLimit(Response Response, bool Magnitude, double? AtLeast, double? AtMost);
