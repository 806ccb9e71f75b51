namespace FrameOpt.Studies;

/// <summary>How long the parts of a line took, in seconds.</summary>
/// <param name="Candidates">Finding them.</param>
/// <param name="Costs">Of every customer with every candidate.</param>
/// <param name="Choice">Choosing, for every number of geometries.</param>
/// <param name="Telling">Who gets which, what would serve them, the fitting chart.</param>
public sealed record LineTimings(double Candidates, double Costs, double Choice, double Telling);
