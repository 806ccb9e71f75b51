namespace FrameOpt.Studies.Reading;

/// <summary>One accepted way to write a unit.</summary>
/// <param name="Text">Exactly as written; empty for a plain number.</param>
/// <param name="ToBase">A value in this unit in the base unit of its dimension.</param>
internal sealed record UnitSpelling(string Text, Func<double, double> ToBase);
