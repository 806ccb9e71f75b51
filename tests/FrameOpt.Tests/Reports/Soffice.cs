using System.Diagnostics;
using System.Globalization;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace FrameOpt.Tests.Reports;

/// <summary>LibreOffice without a window, where it is installed: an independent program that recomputes a workbook.</summary>
public static class Soffice
{
    public static string? Path { get; } = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(System.IO.Path.PathSeparator)
        .Select(folder => System.IO.Path.Combine(folder, "soffice"))
        .FirstOrDefault(File.Exists);

    /// <summary>Takes the saved values out of every formula, types new inputs, lets LibreOffice recompute, and reads the workbooks
    /// back.</summary>
    /// <param name="workbook">As the tool wrote it.</param>
    /// <param name="edits">For each workbook wanted: sheet, cell, and the text or number to type.</param>
    public static IReadOnlyList<WorkbookReader> Recomputed(
        byte[] workbook, IReadOnlyList<IReadOnlyList<(string Sheet, string Cell, object? Value)>> edits)
    {
        var folder = Directory.CreateTempSubdirectory("frameopt-test-").FullName;
        try
        {
            for (var i = 0; i < edits.Count; i++)
                File.WriteAllBytes(System.IO.Path.Combine(folder, $"{i}.xlsx"), Edited(workbook, edits[i]));
            var output = System.IO.Path.Combine(folder, "out");
            var start = new ProcessStartInfo(Path!) { RedirectStandardOutput = true, RedirectStandardError = true };
            foreach (var argument in (string[])[
                $"-env:UserInstallation=file://{folder}/profile", "--headless", "--convert-to", "xlsx", "--outdir", output,
                .. edits.Select((_, i) => System.IO.Path.Combine(folder, $"{i}.xlsx"))])
                start.ArgumentList.Add(argument);
            using var process = Process.Start(start)!;
            _ = process.StandardError.ReadToEndAsync();
            process.StandardOutput.ReadToEnd();
            Assert.True(process.WaitForExit(TimeSpan.FromMinutes(3)), "LibreOffice did not end");
            return [.. edits.Select((_, i) => new WorkbookReader(File.ReadAllBytes(System.IO.Path.Combine(output, $"{i}.xlsx"))))];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static byte[] Edited(byte[] workbook, IReadOnlyList<(string Sheet, string Cell, object? Value)> edits)
    {
        using var stream = new MemoryStream();
        stream.Write(workbook);
        using (var document = SpreadsheetDocument.Open(stream, isEditable: true))
        {
            var book = document.WorkbookPart!;
            foreach (var sheet in book.Workbook.Descendants<Sheet>())
            {
                var cells = ((WorksheetPart)book.GetPartById(sheet.Id!)).Worksheet.Descendants<Cell>().ToList();
                foreach (var cell in cells.Where(cell => cell.CellFormula is not null))
                    cell.CellValue = null;
                foreach (var edit in edits.Where(edit => edit.Sheet == sheet.Name))
                    Type(cells.Single(cell => cell.CellReference == edit.Cell), edit.Value);
            }
        }

        return stream.ToArray();
    }

    private static void Type(Cell cell, object? value)
    {
        cell.RemoveAllChildren();
        cell.DataType = value is string ? CellValues.String : null;
        cell.CellValue = value switch
        {
            null => null,
            string text => new CellValue(text),
            _ => new CellValue(Convert.ToDouble(value, CultureInfo.InvariantCulture)),
        };
    }
}

/// <summary>A test that needs LibreOffice; it says so and is skipped where there is none.</summary>
public sealed class SofficeFactAttribute : FactAttribute
{
    public SofficeFactAttribute()
    {
        if (Soffice.Path is null)
            Skip = "LibreOffice (soffice) is not installed, so nothing here can recompute a workbook";
    }
}
