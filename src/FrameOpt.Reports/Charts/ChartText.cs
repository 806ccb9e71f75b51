namespace FrameOpt.Reports;

/// <summary>Users' text in the little room of a chart or a header.</summary>
internal static class ChartText
{
    /// <summary>The text, cut with an ellipsis where it is longer; never through a surrogate pair.</summary>
    public static string Short(string text, int most)
    {
        var clean = PlainText.Clean(text).ReplaceLineEndings(" ");
        return clean.Length <= most ? clean : PlainText.Clean(clean[..(most - 1)]) + "…";
    }
}
