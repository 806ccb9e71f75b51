namespace FrameOpt.Plans;

/// <summary>A two-level fraction: its runs, and what they can and cannot tell apart.</summary>
/// <param name="Plan">The runs.</param>
/// <param name="Fraction">Defining relation, resolution, aliases.</param>
public sealed record FractionalPlan(Plan Plan, Fraction Fraction);
