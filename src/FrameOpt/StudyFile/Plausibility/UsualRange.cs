using FrameOpt.StudyFile.Syntax;
using static System.FormattableString;

namespace FrameOpt.StudyFile.Plausibility;

/// <summary>The range in which a value usually lies. What lies outside it is allowed, and a warning asks to check it.</summary>
/// <param name="Name">What the value is, in words.</param>
/// <param name="Key">Where the study gives it, or the first of the keys it follows from.</param>
/// <param name="Low">Lower end, in the unit.</param>
/// <param name="High">Upper end, in the unit.</param>
/// <param name="Unit">For words; empty for a plain number.</param>
/// <param name="Cause">What is often wrong when a value lies outside, in a sentence without its end.</param>
internal sealed record UsualRange(string Name, string Key, double Low, double High, string Unit, string Cause)
{
    /// <summary>The source of every range without one of its own.</summary>
    public const string CommonPractice = "common practice, no source";

    /// <summary>Where the range is from.</summary>
    public string Source { get; init; } = CommonPractice;

    /// <summary>The range in words: "350 to 600 mm".</summary>
    public string Text => Invariant($"{Low} to {High} {Unit}").TrimEnd();

    /// <summary>Warns of a value outside the range.</summary>
    /// <param name="value">In the unit.</param>
    /// <param name="at">Where the study gives it.</param>
    /// <param name="diagnostics">Takes the warning.</param>
    /// <param name="where">Which of several it is: " at one end of its range"; may be empty.</param>
    public void Check(double value, Node at, DiagnosticBag diagnostics, string where = "")
    {
        const double rounding = 1e-9;
        if (value < Low - rounding || value > High + rounding)
            diagnostics.AddWarning(at, Invariant($"{Name}{where} is {Math.Round(value, Math.Abs(value) < 10 ? 3 : 1)} {Unit}").TrimEnd()
                + $"; {Text} is usual ({Source}). {Cause}.");
    }
}
