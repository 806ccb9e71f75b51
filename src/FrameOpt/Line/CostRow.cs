namespace FrameOpt.Line;

/// <summary>Works out what one customer would be left with, so that the costs of very many need not be kept.</summary>
/// <param name="customer">Its number.</param>
/// <param name="costs">To be filled: one a candidate, 0 or more, infinite where the candidate is not allowed. The same numbers every time.</param>
public delegate void CostRow(int customer, Span<double> costs);
