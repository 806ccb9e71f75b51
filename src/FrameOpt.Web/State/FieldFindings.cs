using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.Web.State;

/// <summary>What the command check says, in its words, of one value of the study.</summary>
/// <param name="Errors">To correct.</param>
/// <param name="Warnings">Odd, and allowed.</param>
/// <param name="Invented">Still the template's.</param>
public sealed record FieldFindings(IReadOnlyList<string> Errors, IReadOnlyList<string> Warnings, IReadOnlyList<string> Invented)
{
    /// <summary>True when the value is wrong or odd.</summary>
    public bool AreUrgent => Errors.Count + Warnings.Count > 0;

    /// <summary>What is said at the place of a value, of its key, or of a key that is missing.</summary>
    /// <param name="session">The study.</param>
    /// <param name="path">As in <see cref="StudyFile.Editing.StudyEdit"/>.</param>
    public static FieldFindings Of(Session session, string path)
    {
        var (read, places) = (session.Reading, session.Edit.Places(path));
        IReadOnlyList<string> Here(IReadOnlyList<Warning> warnings) =>
            [.. warnings.Where(one => places.Contains((one.Line, one.Column))).Select(one => one.Message)];
        return new FieldFindings(
            [.. read.Diagnostics.Where(one => one.MissingPath == path || places.Contains((one.Line, one.Column)))
                .Select(one => $"{one.Message} {one.Fix}")],
            Here(read.Warnings), Here(read.Invented));
    }
}
