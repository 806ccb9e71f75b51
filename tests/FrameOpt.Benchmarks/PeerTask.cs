namespace FrameOpt.Benchmarks;

/// <summary>A task that a peer does as well.</summary>
/// <param name="Kind">What is done, as the peer's program knows it.</param>
/// <param name="Input">The name of the points, or of whatever the kind works on.</param>
/// <param name="Points">The points one after the other; empty if the kind needs none.</param>
/// <param name="Objectives">How many objectives.</param>
/// <param name="Run">Does the task and gives a number by which both sides show that they did the same.</param>
public sealed record PeerTask(string Kind, string Input, double[] Points, int Objectives, Func<double> Run);
