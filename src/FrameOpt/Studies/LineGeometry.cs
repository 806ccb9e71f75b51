using FrameOpt.Model;

namespace FrameOpt.Studies;

/// <summary>One of the geometries a line makes.</summary>
/// <param name="Letter">A, B, C ..., from the one for the lightest pilots on.</param>
/// <param name="Candidate">Its number among the candidates.</param>
/// <param name="Design">As built on the study's own machine.</param>
/// <param name="Customers">How many customers get it.</param>
/// <param name="Share">Their part of all shares, 0 to 1.</param>
public sealed record LineGeometry(char Letter, int Candidate, FrameGeometry Design, int Customers, double Share);
