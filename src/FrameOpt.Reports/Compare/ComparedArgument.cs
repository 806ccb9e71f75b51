using System.Globalization;

namespace FrameOpt.Reports.Compare;

/// <summary>A folder of a run, and which of its designs: "results/monday" or "results/monday:3".</summary>
/// <param name="Folder">As written.</param>
/// <param name="Position">In the order of the ranking, from 1.</param>
internal sealed record ComparedArgument(string Folder, int Position)
{
    /// <summary>A folder whose name ends so itself is taken as it stands.</summary>
    public static ComparedArgument Of(string text)
    {
        var colon = text.LastIndexOf(':');
        return colon > 0 && !Directory.Exists(text)
            && int.TryParse(text[(colon + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var position)
            ? new ComparedArgument(text[..colon], position)
            : new ComparedArgument(text, 1);
    }
}
