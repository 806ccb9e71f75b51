using FrameOpt.Studies;
using FrameOpt.Studies.Noise;
using FrameOpt.StudyFile.Editing;

namespace FrameOpt.Running;

/// <summary>One number of a study that a measurement changed.</summary>
/// <param name="Path">As in machine.masses.0.right.</param>
/// <param name="Name">What it is, for a reader.</param>
/// <param name="Before">As written; empty for a number that was not there.</param>
/// <param name="After">As written now.</param>
public sealed record StudyChange(string Path, string Name, string Before, string After)
{
    /// <summary>True for a number of machine or wing, false for how far one may be off.</summary>
    public bool IsOfMachine => !Path.StartsWith("noise.", StringComparison.Ordinal);

    /// <summary>True for a list, which is long to read.</summary>
    public bool IsList => After.StartsWith('[');
}

/// <summary>A user's study with what measurements taught it: only numbers change, every comment stays.</summary>
/// <param name="Text">Of the corrected file.</param>
/// <param name="Changes">In the order they were made.</param>
public sealed record CorrectedStudy(string Text, IReadOnlyList<StudyChange> Changes)
{
    /// <summary>A number that keeps less than this of its spread is marked as measured.</summary>
    private const double MeasuredShare = 0.7;

    /// <summary>Moves the numbers as far as the readings make likely, and narrows their spreads.</summary>
    /// <param name="text">Of the study file.</param>
    /// <param name="study">As read from it, without a variant.</param>
    /// <param name="learnt">What the readings taught.</param>
    /// <param name="correlations">Between what is believed of the learnt numbers now.</param>
    /// <param name="spacingMetres">Hang-point spacing of the frame that was measured.</param>
    /// <param name="origin">Where the numbers come from, for the head of the file: "hang check of 2026-05-01, left 46.1 kgf, ...".</param>
    public static CorrectedStudy Of(
        string text, Study study, IReadOnlyList<LearntNumber> learnt, IReadOnlyList<RankCorrelation> correlations, double spacingMetres,
        string origin)
    {
        var sheet = new StudySheet(text);
        CorrectedFigures.Change(sheet, study, learnt, spacingMetres);
        var measured = learnt.Where(number => number.After.StandardDeviation < MeasuredShare * number.Before.StandardDeviation).ToList();
        foreach (var mark in sheet.Changes.Where(change => change.Before.Length > 0)
            .Select(change => new FigureOrigin(change.Path, FigureOrigin.Measured))
            .Where(mark => measured.Any(number => mark.IsOf(number.Source, study.Machine))).ToList())
        {
            sheet.Mark(mark.Path, mark.Word);
        }

        CorrectedSpreads.Change(sheet, study, learnt, correlations, spacingMetres);
        return new CorrectedStudy(sheet.Changes.Count == 0 ? text : Headed(sheet.Text, origin, sheet.Changes), sheet.Changes);
    }

    private static string Headed(string text, string origin, IReadOnlyList<StudyChange> changes)
    {
        var first = text.StartsWith("# yaml-language-server", StringComparison.Ordinal) ? text.IndexOf('\n') + 1 : 0;
        var lines = changes.Where(change => change.IsOfMachine).Select(change =>
            $"#   {change.Name} ({change.Path}): {(change.Before.Length == 0 ? "not given" : change.Before)} -> {change.After}\n");
        return $"{text[..first]}# Corrected by frameopt from a {origin}:\n{string.Concat(lines)}"
            + $"#   and how far they may still be off, under noise\n{text[first..]}";
    }
}

/// <summary>A study's text while it is corrected, with a list of what changed.</summary>
/// <param name="text">As the user wrote it.</param>
internal sealed class StudySheet(string text)
{
    private readonly List<StudyChange> changes = [];
    private StudyEdit edit = StudyEdit.Of(text);

    public string Text { get; private set; } = text;

    public IReadOnlyList<StudyChange> Changes => changes;

    /// <summary>A value as it stands now; null where there is none.</summary>
    public string? Value(string path) => edit.Value(path);

    /// <summary>How many items a list or group has now.</summary>
    public int Count(string path) => edit.Count(path);

    /// <summary>Marks where a figure comes from.</summary>
    public void Mark(string path, string origin) => Take(edit.With($"origins.{path}", origin));

    /// <summary>Replaces a value, or adds it; false where that cannot be.</summary>
    public bool Change(string path, string name, string after, bool asList = false)
    {
        var before = edit.Value(path) ?? "";
        var changed = asList ? edit.WithList(path, after) : edit.With(path, after);
        if (before == after || changed == Text)
            return before == after;
        Take(changed);
        changes.Add(new StudyChange(path, name, before, after));
        return true;
    }

    private void Take(string changed) => (Text, edit) = (changed, StudyEdit.Of(changed));
}
