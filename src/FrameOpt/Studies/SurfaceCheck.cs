namespace FrameOpt.Studies;

/// <summary>A surface against the model on a fine grid of the plan's cube.</summary>
/// <param name="Points">How many designs were compared; those that cannot fly are not counted.</param>
/// <param name="LargestError">Largest difference either way, in the response's unit.</param>
/// <param name="RootMeanSquareError">Over those designs, in the response's unit.</param>
/// <param name="Range">Largest less smallest value of the model over those designs, in the response's unit.</param>
/// <param name="WorstCoded">Where the difference is largest, in coded units.</param>
public sealed record SurfaceCheck(
    long Points, double LargestError, double RootMeanSquareError, double Range, IReadOnlyList<double> WorstCoded);
