using FrameOpt.Search;

namespace FrameOpt.Studies;

/// <summary>How far a run is.</summary>
/// <param name="Stage">In words.</param>
/// <param name="Done">Designs evaluated in this stage.</param>
/// <param name="Total">Designs to evaluate in this stage.</param>
/// <param name="Batch">The evaluations just made, in the first stage; valid until the next step.</param>
public sealed record RunProgress(string Stage, long Done, long Total, EvaluatedBatch? Batch);
