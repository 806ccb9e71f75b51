using System.IO.Compression;
using System.Xml.Linq;
using DocumentFormat.OpenXml.Packaging;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>Takes times and random names out of a workbook's package, so that the same run gives the same bytes.</summary>
internal static class ReproduciblePackage
{
    private static readonly DateTimeOffset earliestInArchive = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private static readonly XNamespace cp = "http://schemas.openxmlformats.org/package/2006/metadata/core-properties";
    private static readonly XNamespace dc = "http://purl.org/dc/elements/1.1/";

    /// <summary>Names author and title without a time, and gives fixed names to what ClosedXML names at random.</summary>
    public static void SetProperties(SpreadsheetDocument document, string author, string title)
    {
        if (document.CoreFilePropertiesPart is { } dated)
            document.DeletePart(dated);
        var part = document.AddCoreFilePropertiesPart();
        document.ChangeIdOfPart(part, "core");
        document.ChangeIdOfPart(document.WorkbookPart!, "workbook");
        using var stream = part.GetStream(FileMode.Create);
        new XElement(
            cp + "coreProperties",
            new XAttribute(XNamespace.Xmlns + "cp", cp),
            new XAttribute(XNamespace.Xmlns + "dc", dc),
            new XElement(dc + "creator", author),
            new XElement(dc + "title", TextSanitizer.Clean(title))).Save(stream, SaveOptions.DisableFormatting);
    }

    /// <summary>Copies a package with the earliest time a ZIP archive knows, and the rows of long tables in it. The rows go to the archive
    /// as they are made: an open package would keep them in memory, a hundred megabytes for a long mission.</summary>
    /// <param name="package">Complete but for the rows.</param>
    /// <param name="tables">With the path of their sheet in the package.</param>
    /// <param name="stream">Left open.</param>
    public static void Copy(Stream package, IReadOnlyDictionary<string, PlacedTable> tables, Stream stream)
    {
        using var finished = new MemoryStream();
        using (var from = new ZipArchive(package, ZipArchiveMode.Read))
        using (var to = new ZipArchive(finished, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var part in from.Entries)
            {
                var entry = to.CreateEntry(part.FullName);
                entry.LastWriteTime = earliestInArchive;
                using var source = part.Open();
                using var copy = entry.Open();
                if (tables.TryGetValue(part.FullName, out var table))
                    CellWriter.CopyWithRows(source, table, copy);
                else
                    source.CopyTo(copy);
            }
        }

        finished.WriteTo(stream);
    }
}
