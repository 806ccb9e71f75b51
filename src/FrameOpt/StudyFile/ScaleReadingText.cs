using System.Text.RegularExpressions;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile;

/// <summary>Reads what two scales read, as typed: "left 46.1 kgf, right 65.2 kgf", either side first.</summary>
public static partial class ScaleReadingText
{
    private const string Example = "Write both sides, for example 'left 46.1 kgf, right 65.2 kgf'.";

    /// <summary>The two loads in N; null with everything wrong in the diagnostics.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="source">What the errors call the place, for example --scales.</param>
    /// <param name="errors">Empty when both could be read.</param>
    public static (double LeftNewtons, double RightNewtons)? Read(string text, string source, out IReadOnlyList<Diagnostic> errors)
    {
        var diagnostics = new DiagnosticBag(source);
        var match = BothSides().Match(text);
        (double, double)? loads = null;
        if (!match.Success || match.Groups["one"].Value == match.Groups["other"].Value)
        {
            diagnostics.Add(0, 0, text, "Two readings are wanted, one of each side.", Example);
        }
        else
        {
            var first = Load(match.Groups["first"].Value, source, diagnostics);
            var second = Load(match.Groups["second"].Value, source, diagnostics);
            loads = match.Groups["one"].Value == "left" ? (first, second) : (second, first);
        }

        errors = diagnostics.Diagnostics();
        return errors.Count == 0 ? loads : null;
    }

    /// <summary>What one scale reads, in N; null after an error.</summary>
    /// <param name="text">A force, or a mass as scales show it.</param>
    /// <param name="source">What the error calls the place, for example left scale.</param>
    /// <param name="errors">Empty when it could be read.</param>
    public static double? ReadOne(string text, string source, out IReadOnlyList<Diagnostic> errors)
    {
        var diagnostics = new DiagnosticBag(source);
        var load = Load(text, source, diagnostics);
        errors = diagnostics.Diagnostics();
        return errors.Count == 0 ? load : null;
    }

    /// <summary>One load in N; NaN after an error.</summary>
    private static double Load(string text, string source, DiagnosticBag diagnostics)
    {
        var isMass = NumberText.Parse(text) is { Message: null, Unit: var unit } && Dimension.Mass.FindUnit(unit) is not null;
        var quantity = Quantity.Read(new Node.Scalar(text, false, 0, 0), source, isMass ? Dimension.Mass : Dimension.Force,
            new AllowedRange(0, true, double.PositiveInfinity, "0 or more"), diagnostics);
        return quantity is null ? double.NaN : quantity.Base * (isMass ? Model.Constants.StandardGravity : 1);
    }

    [GeneratedRegex(@"^\s*(?<one>left|right)\s+(?<first>\S.*?)\s*[,;]\s*(?<other>left|right)\s+(?<second>\S.*?)\s*$",
        RegexOptions.CultureInvariant)]
    private static partial Regex BothSides();
}
