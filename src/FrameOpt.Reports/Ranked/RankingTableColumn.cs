namespace FrameOpt.Reports;

/// <summary>A column of the table on the sheet Ranking.</summary>
/// <param name="Header">With its unit.</param>
/// <param name="NumberFormat">How it is shown.</param>
/// <param name="DataColumn">Of the sheet Ranking data, from 1; 0 for the row number there.</param>
/// <param name="Cached">The value for one of the designs held.</param>
internal sealed record RankingTableColumn(string Header, string NumberFormat, int DataColumn, Func<int, object> Cached)
{
    /// <summary>A cell to subtract, or null.</summary>
    public string? LessCell { get; init; }
}
