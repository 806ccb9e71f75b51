namespace FrameOpt.Reports;

/// <summary>A column of the table of customers.</summary>
/// <param name="Header">With its unit.</param>
/// <param name="NumberFormat">How a spreadsheet shows it; that of texts for texts.</param>
/// <param name="Value">Of one customer: a text or a number.</param>
internal sealed record CustomerColumn(string Header, string NumberFormat, Func<CustomerLine, object> Value);
