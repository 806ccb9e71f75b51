namespace FrameOpt.Reports;

/// <summary>What a compared design leaves in one phase.</summary>
/// <param name="Name">Of the phase.</param>
/// <param name="ResidualNewtonMetres">Turns right, +.</param>
/// <param name="LeanMillimetres">That cancels it, to the right +.</param>
/// <param name="Effort">Lean over the largest lean.</param>
public sealed record ComparedPhase(string Name, double ResidualNewtonMetres, double LeanMillimetres, double Effort);
