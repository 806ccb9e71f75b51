using FrameOpt.StudyFile.Editing;

namespace FrameOpt.Web.State;

/// <summary>Where a figure comes from: it stands in a comment at the end of the study file, so that it travels with the file.</summary>
public static class Origins
{
    private const string Lead = "# where figures come from: ";

    /// <summary>The words for it, in order of trust; the first says nothing.</summary>
    public static IReadOnlyList<string> All { get; } = ["", "measured", "maker", "guess"];

    /// <summary>The word for a place; empty where nothing is said.</summary>
    /// <param name="text">Of the study.</param>
    /// <param name="path">As in <see cref="StudyEdit"/>.</param>
    public static string Of(string text, string path) => Read(text).GetValueOrDefault(path, "");

    /// <summary>The text with another word for a place.</summary>
    /// <param name="text">Of the study.</param>
    /// <param name="path">As in <see cref="StudyEdit"/>.</param>
    /// <param name="word">One of <see cref="All"/>.</param>
    public static string With(string text, string path, string word)
    {
        var said = Read(text);
        said[path] = word;
        var rest = string.Join('\n', text.Split('\n').Where(line => !line.StartsWith(Lead))).TrimEnd('\n');
        var line = string.Join("; ", said.Where(pair => pair.Value.Length > 0).OrderBy(pair => pair.Key, StringComparer.Ordinal)
            .Select(pair => $"{pair.Key} {pair.Value}"));
        return line.Length == 0 ? $"{rest}\n" : $"{rest}\n{Lead}{line}\n";
    }

    private static Dictionary<string, string> Read(string text)
    {
        var line = text.Split('\n').LastOrDefault(line => line.StartsWith(Lead))?[Lead.Length..] ?? "";
        return line.Split("; ", StringSplitOptions.RemoveEmptyEntries).Select(pair => pair.TrimEnd().Split(' '))
            .Where(pair => pair.Length == 2 && All.Contains(pair[1])).GroupBy(pair => pair[0])
            .ToDictionary(pair => pair.Key, pair => pair.Last()[1]);
    }
}
