using FrameOpt.Analysis;
using FrameOpt.Model;

namespace FrameOpt.Studies;

/// <summary>A surface fitted to one response over a plan, and how far it is from the model it stands for.</summary>
/// <param name="Response">What is fitted, in its unit; signed where the response is.</param>
/// <param name="Values">Of each run; NaN where the design cannot fly.</param>
/// <param name="Fit">In coded units; null when too few runs can fly.</param>
/// <param name="Shape">Stationary point and curvatures; null for a surface without squares.</param>
/// <param name="Check">How far the surface is from the model over the plan's cube; null without a fit.</param>
public sealed record FittedSurface(
    Response Response,
    IReadOnlyList<double> Values,
    RegressionFit? Fit,
    ResponseSurface? Shape,
    SurfaceCheck? Check);
