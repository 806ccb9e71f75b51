using System.Text.RegularExpressions;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>Rows and columns repeated on every printed page.</summary>
internal static partial class PrintTitles
{
    /// <summary>Gives their references dollar signs: ClosedXML 0.95 leaves them out, and spreadsheet programs then repeat
    /// nothing.</summary>
    public static void MakeAbsolute(WorkbookPart book)
    {
        foreach (var name in book.Workbook.Descendants<DefinedName>().Where(name => name.Name == "_xlnm.Print_Titles"))
            name.Text = Reference().Replace(name.Text, "!$$$1:$$$2");
    }

    [GeneratedRegex("!([A-Z]+|[0-9]+):([A-Z]+|[0-9]+)")]
    private static partial Regex Reference();
}
