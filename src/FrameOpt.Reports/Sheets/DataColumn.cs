namespace FrameOpt.Reports;

/// <summary>A column of a long table in the workbook.</summary>
/// <param name="Header">With its unit.</param>
/// <param name="NumberFormat">How its numbers are shown.</param>
/// <param name="WidthCharacters">Of the column.</param>
internal sealed record DataColumn(string Header, string NumberFormat, double WidthCharacters)
{
    /// <summary>The number format of a column of texts.</summary>
    public const string TextFormat = "@";

    private const double NarrowestCharacters = 9;

    /// <summary>A column of numbers as wide as the longest word of its header.</summary>
    public static DataColumn OfNumbers(string header, string numberFormat)
    {
        var spaced = header.Replace('_', ' ').Replace("[", " [");
        var longestWord = spaced.Split(' ').Max(word => word.Length);
        return new DataColumn(spaced.Replace("  ", " "), numberFormat, Math.Clamp(longestWord + 2.0, NarrowestCharacters, 24));
    }
}
