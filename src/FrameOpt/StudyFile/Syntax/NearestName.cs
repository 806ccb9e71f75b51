namespace FrameOpt.StudyFile.Syntax;

/// <summary>Finds the known name a misspelt word was probably meant to be.</summary>
internal static class NearestName
{
    /// <summary>Longer words are names of nothing known, and comparing them takes time.</summary>
    private const int MaxLength = 80;

    /// <summary>The nearest of the known names, or null when none is near.</summary>
    public static string? Of(string word, IEnumerable<string> known)
    {
        if (word.Length > MaxLength)
            return null;
        var lower = word.ToLowerInvariant().Replace('-', '_').Replace(' ', '_');
        return known
            .Where(name => name.Length <= MaxLength && Math.Abs(name.Length - word.Length) <= Allowed(name))
            .Select(name => (name, distance: Distance(lower, name.ToLowerInvariant().Replace('-', '_').Replace(' ', '_'))))
            .Where(candidate => candidate.distance <= Allowed(candidate.name))
            .OrderBy(candidate => candidate.distance)
            .Select(candidate => candidate.name)
            .FirstOrDefault();
    }

    /// <summary>Largest edit distance: a third of the name, at least 2.</summary>
    private static int Allowed(string name) => Math.Max(2, name.Length / 3);

    /// <summary>Edit distance: letters to insert, remove or replace to turn one word into the other.</summary>
    /// <remarks>Source: R. A. Wagner, M. J. Fischer, "The String-to-String Correction Problem", J. ACM 21(1), 1974 (from memory).</remarks>
    private static int Distance(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var above = row[j];
                var replaced = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                row[j] = Math.Min(replaced, 1 + Math.Min(above, row[j - 1]));
                diagonal = above;
            }
        }

        return row[b.Length];
    }
}
