using System.Buffers.Binary;
using System.Xml.Linq;
using DocumentFormat.OpenXml.Packaging;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>Takes times and random names out of a workbook's package, so that the same run gives the same bytes.</summary>
/// <remarks>Source: PKWARE, APPNOTE.TXT, ZIP File Format Specification, 4.3.7, 4.3.12 and 4.3.16.</remarks>
internal static class ReproduciblePackage
{
    private const uint EndOfDirectory = 0x06054b50;
    private const int EndLength = 22;
    private const int CentralLength = 46;
    private const uint Midnight1980 = 0x00210000; // date in the upper half, time in the lower

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

    /// <summary>Sets the time of every file of the archive, in place, to the earliest a ZIP archive knows: 1980-01-01.</summary>
    public static void SetTimes(MemoryStream archive)
    {
        var bytes = archive.GetBuffer().AsSpan(0, (int)archive.Length);
        var end = bytes.Length - EndLength;
        while (BinaryPrimitives.ReadUInt32LittleEndian(bytes[end..]) != EndOfDirectory)
            end--;
        int count = BinaryPrimitives.ReadUInt16LittleEndian(bytes[(end + 10)..]);
        var at = (int)BinaryPrimitives.ReadUInt32LittleEndian(bytes[(end + 16)..]);
        for (var i = 0; i < count; i++)
        {
            BinaryPrimitives.WriteUInt32LittleEndian(bytes[(at + 12)..], Midnight1980);
            var local = (int)BinaryPrimitives.ReadUInt32LittleEndian(bytes[(at + 42)..]);
            BinaryPrimitives.WriteUInt32LittleEndian(bytes[(local + 10)..], Midnight1980);
            at += CentralLength + BinaryPrimitives.ReadUInt16LittleEndian(bytes[(at + 28)..])
                + BinaryPrimitives.ReadUInt16LittleEndian(bytes[(at + 30)..]) + BinaryPrimitives.ReadUInt16LittleEndian(bytes[(at + 32)..]);
        }
    }
}
