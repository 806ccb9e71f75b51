namespace FrameOpt.Line;

/// <summary>The best columns found and what is proven of the rest.</summary>
/// <param name="Chosen">Columns, ascending.</param>
/// <param name="Value">Of the chosen.</param>
/// <param name="Bound">No choice has a smaller value than this, or than the value asked to be beaten where that is less.</param>
internal sealed record MedianAnswer(int[] Chosen, double Value, double Bound);
