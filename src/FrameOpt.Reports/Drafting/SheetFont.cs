using System.Buffers.Binary;
using System.IO.Compression;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Drafting;

/// <summary>The font of the sheets, a part of DejaVu Sans Condensed: Latin, Greek and Cyrillic letters and a few marks.</summary>
internal static class SheetFont
{
    /// <summary>In a PDF; the letters before the plus sign say that it is a part of a font, and are always the same.</summary>
    public const string Name = "FRAMEO+DejaVuSansCondensed";

    /// <summary>Font size over the height of a capital letter: 2048 / 1493 units.</summary>
    public const double SizePerCapital = (double)UnitsPerEm / CapitalUnits;

    /// <summary>Units of a font size.</summary>
    public const int UnitsPerEm = 2048;

    /// <summary>Height of a capital letter.</summary>
    public const int CapitalUnits = 1493;

    private const string ResourceName = "sheet-font.ttf.zlib";
    private const char Unknown = '\uFFFD';
    private static readonly Lazy<(byte[] Packed, byte[] Plain)> files = new(Read);
    private static readonly Lazy<Dictionary<char, (ushort Glyph, ushort Advance)>> letters = new(() => Letters(files.Value.Plain));

    /// <summary>The font file, compressed as a PDF holds it.</summary>
    public static byte[] Packed => files.Value.Packed;

    /// <summary>Length of the font file.</summary>
    public static int PlainLength => files.Value.Plain.Length;

    /// <summary>Number and advance of a letter; of a mark in its place where the font lacks it.</summary>
    public static (ushort Glyph, ushort Advance) Letter(char letter) =>
        letters.Value.TryGetValue(letter, out var own) ? own : letters.Value[Unknown];

    /// <summary>Length of a text, mm.</summary>
    /// <param name="text">One line.</param>
    /// <param name="height">Of a capital letter, mm.</param>
    public static double Width(string text, double height) => text.Sum(letter => (int)Letter(letter).Advance) * height / CapitalUnits;

    /// <summary>Lines of whole words, none longer than a width; a word that is too long alone is cut.</summary>
    public static IReadOnlyList<string> Wrap(string text, double height, double width)
    {
        var lines = new List<string>();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = lines.Count == 0 ? word : $"{lines[^1]} {word}";
            if (lines.Count > 0 && Width(longer, height) <= width)
                lines[^1] = longer;
            else
                lines.Add(Cut(word, height, width));
        }

        return lines;
    }

    /// <summary>A text on one line, cut where it is longer than a width.</summary>
    public static string Cut(string text, double height, double width)
    {
        var shown = TextSanitizer.Clean(text).ReplaceLineEndings(" ");
        while (shown.Length > 1 && Width(shown, height) > width)
            shown = $"{TextSanitizer.Clean(shown[..^(shown.EndsWith('…') ? 2 : 1)])}…";
        return shown;
    }

    private static (byte[] Packed, byte[] Plain) Read()
    {
        using var resource = typeof(SheetFont).Assembly.GetManifestResourceStream(ResourceName)!;
        using var packed = new MemoryStream();
        resource.CopyTo(packed);
        packed.Position = 0;
        using var unpacked = new MemoryStream();
        using (var stream = new ZLibStream(packed, CompressionMode.Decompress, leaveOpen: true))
            stream.CopyTo(unpacked);
        return (packed.ToArray(), unpacked.ToArray());
    }

    /// <summary>Reads the tables cmap (format 4) and hmtx.</summary>
    private static Dictionary<char, (ushort Glyph, ushort Advance)> Letters(byte[] font)
    {
        int Word(int at) => BinaryPrimitives.ReadUInt16BigEndian(font.AsSpan(at));
        int Table(string tag) => Enumerable.Range(0, Word(4)).Select(i => 12 + 16 * i)
            .Where(at => System.Text.Encoding.ASCII.GetString(font, at, 4) == tag)
            .Select(at => (int)BinaryPrimitives.ReadUInt32BigEndian(font.AsSpan(at + 8))).First();
        var (cmap, hmtx, measured) = (Table("cmap"), Table("hmtx"), Word(Table("hhea") + 34));
        var ranges = cmap + (int)BinaryPrimitives.ReadUInt32BigEndian(font.AsSpan(cmap + 8));
        var count = Word(ranges + 6) / 2;
        var found = new Dictionary<char, (ushort, ushort)>();
        for (var range = 0; range < count; range++)
        {
            var at = ranges + 14 + 2 * range;
            var (last, first, delta, offset) = (Word(at), Word(at + 2 + 2 * count), Word(at + 2 + 4 * count), Word(at + 2 + 6 * count));
            for (var code = first; code <= last && code < 0xFFFF; code++)
            {
                var listed = offset == 0 ? code : Word(at + 2 + 6 * count + offset + 2 * (code - first));
                var glyph = offset != 0 && listed == 0 ? 0 : (listed + delta) & 0xFFFF;
                if (glyph != 0)
                    found[(char)code] = ((ushort)glyph, (ushort)Word(hmtx + 4 * Math.Min(glyph, measured - 1)));
            }
        }

        return found;
    }
}
