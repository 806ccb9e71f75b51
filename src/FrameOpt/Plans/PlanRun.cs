namespace FrameOpt.Plans;

/// <summary>One run of a plan.</summary>
/// <param name="Number">From 1, in the plan's standard order.</param>
/// <param name="Kind">What the run is in its plan.</param>
/// <param name="Block">From 1; runs of one block are made under like conditions.</param>
/// <param name="Coded">One value a factor: -1 at the low end, +1 at the high end; axial runs may lie outside.</param>
public sealed record PlanRun(int Number, PointKind Kind, int Block, double[] Coded);
