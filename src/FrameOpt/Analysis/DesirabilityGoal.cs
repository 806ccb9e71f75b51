namespace FrameOpt.Analysis;

/// <summary>A response and how much its values are liked.</summary>
/// <param name="Response">Its value at a design, as a fit's <see cref="RegressionFit.Predict"/> gives it.</param>
/// <param name="Desirability">Of that value.</param>
public sealed record DesirabilityGoal(Func<IReadOnlyList<double>, double> Response, Desirability Desirability);
