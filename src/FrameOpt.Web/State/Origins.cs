using FrameOpt.Studies;
using FrameOpt.StudyFile.Editing;

namespace FrameOpt.Web.State;

/// <summary>Where a figure comes from: the group origins of the study, so that it travels with the file and answers know
/// it.</summary>
public static class Origins
{
    private static readonly string unknown = FigureOrigin.Names[^1];

    /// <summary>The words for it, in order of trust; the first says nothing.</summary>
    public static IReadOnlyList<string> All { get; } = ["", .. FigureOrigin.Names.Where(word => word != unknown)];

    /// <summary>The word for a place; empty where nothing is said.</summary>
    /// <param name="text">Of the study.</param>
    /// <param name="path">As in <see cref="StudyEdit"/>.</param>
    public static string Of(string text, string path) =>
        StudyEdit.Of(text).Value($"origins.{path}") is { } word && All.Contains(word) ? word : "";

    /// <summary>The text with another word for a place.</summary>
    /// <param name="text">Of the study.</param>
    /// <param name="path">As in <see cref="StudyEdit"/>.</param>
    /// <param name="word">One of <see cref="All"/>.</param>
    public static string With(string text, string path, string word)
    {
        var edit = StudyEdit.Of(text);
        return edit.Value(path) is null || word.Length == 0 && edit.Value($"origins.{path}") is null ? text
            : edit.With($"origins.{path}", word.Length == 0 ? unknown : word);
    }
}
