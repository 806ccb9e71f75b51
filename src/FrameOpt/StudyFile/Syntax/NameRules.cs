using System.Globalization;
using System.Text;

namespace FrameOpt.StudyFile.Syntax;

/// <summary>The names a user gives: of phases, masses, variants, options and choices. Two names are the same when a reader would take
/// them for the same.</summary>
internal static class NameRules
{
    /// <summary>Longest name, in characters.</summary>
    public const int MaxLength = 60;

    /// <summary>What is wrong with a name, and how to correct it; null when it is right.</summary>
    /// <param name="what">What is named: "phase", "mass".</param>
    /// <param name="name">As typed.</param>
    public static (string What, string Fix)? Problem(string what, string name)
    {
        if (string.IsNullOrWhiteSpace(name))
            return ($"The name of a {what} is empty.", "Give it one.");
        if (name.Contains('\n') || name.Contains('\r'))
            return ($"The name of a {what} is one line.", "Write it on one line.");
        if (name != name.Trim())
            return ($"The name of a {what} begins or ends with a blank.", $"Write `{name.Trim()}`.");
        return name.Length > MaxLength
            ? ($"The name of a {what} has {name.Length} characters; {MaxLength} is the most.", "Shorten it.") : null;
    }

    /// <summary>True when two names differ in nothing, or only in capitals, blanks, or characters that cannot be seen.</summary>
    public static bool AreAlike(string left, string right) => Key(left) == Key(right);

    /// <summary>What alike names have in common.</summary>
    public static string Key(string name)
    {
        var key = new StringBuilder(name.Length);
        foreach (var letter in VisiblePart(name).ToLowerInvariant())
        {
            if (!char.IsWhiteSpace(letter))
                key.Append(letter);
            else if (key.Length > 0 && key[^1] != ' ')
                key.Append(' ');
        }

        return key.ToString().TrimEnd();
    }

    private static string VisiblePart(string name) => string.Concat(name.EnumerateRunes()
        .Where(rune => Rune.GetUnicodeCategory(rune) is not UnicodeCategory.Format)
        .Select(rune => rune.ToString()));
}
