using System.Buffers.Binary;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>Sets the time of every file in a ZIP archive to its earliest, 1980-01-01: the same run gives the same bytes.</summary>
/// <remarks>Source: PKWARE, APPNOTE.TXT, ZIP File Format Specification, 4.3.7, 4.3.12 and 4.3.16.</remarks>
internal static class ZipTimestamps
{
    private const uint EndOfDirectory = 0x06054b50;
    private const int EndLength = 22;
    private const int CentralLength = 46;
    private const uint Midnight1980 = 0x00210000; // date in the upper half, time in the lower

    /// <summary>Changes the archive in place.</summary>
    public static void Write(MemoryStream archive)
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
