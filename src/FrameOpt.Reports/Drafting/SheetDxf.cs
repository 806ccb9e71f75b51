using System.Globalization;
using System.Text;

namespace FrameOpt.Reports.Drafting;

/// <summary>A sheet as DXF of release 12, which every program that draws or cuts reads; one unit is a millimetre.</summary>
/// <remarks>Source: the DXF reference of release 12 (AC1009), from memory.</remarks>
internal static class SheetDxf
{
    private const string TextLayer = "TEXT";
    private const string Continuous = "CONTINUOUS";

    /// <summary>Writes it.</summary>
    public static void Write(Sheet sheet, Stream stream)
    {
        var text = new StringBuilder();
        void Pair(int code, string value) => text.Append(CultureInfo.InvariantCulture, $"{code,3}\n{value}\n");
        void Pairs(params ReadOnlySpan<(int Code, string Value)> pairs)
        {
            foreach (var (code, value) in pairs)
                Pair(code, value);
        }

        Pairs((0, "SECTION"), (2, "HEADER"), (9, "$ACADVER"), (1, "AC1009"), (0, "ENDSEC"), (0, "SECTION"), (2, "TABLES"));
        var dashed = Pen.All.Where(pen => pen.Dashes.Count > 0).ToList();
        Pairs((0, "TABLE"), (2, "LTYPE"), (70, $"{dashed.Count + 1}"),
            (0, "LTYPE"), (2, Continuous), (70, "0"), (3, "solid"), (72, "65"), (73, "0"), (40, "0"));
        foreach (var pen in dashed)
        {
            Pairs((0, "LTYPE"), (2, LineType(pen)), (70, "0"), (3, pen.Layer.ToLowerInvariant()), (72, "65"),
                (73, $"{pen.Dashes.Count}"), (40, Sheet.Number(pen.Dashes.Sum())));
            foreach (var (i, length) in pen.Dashes.Index())
                Pair(49, Sheet.Number(i % 2 == 0 ? length : -length));
        }

        Pairs((0, "ENDTAB"), (0, "TABLE"), (2, "LAYER"), (70, $"{Pen.All.Count + 1}"));
        foreach (var (layer, type) in Pen.All.Select(pen => (pen.Layer, LineType(pen))).Append((TextLayer, Continuous)))
            Pairs((0, "LAYER"), (2, layer), (70, "0"), (62, "7"), (6, type));
        Pairs((0, "ENDTAB"), (0, "ENDSEC"), (0, "SECTION"), (2, "ENTITIES"));
        foreach (var mark in sheet.Marks)
            Pairs([.. Entity(mark)]);
        Pairs((0, "ENDSEC"), (0, "EOF"));
        stream.Write(Encoding.ASCII.GetBytes(text.ToString()));
    }

    /// <summary>The usual names, which some programs know without reading their dashes.</summary>
    private static string LineType(Pen pen) => pen == Pen.Dashed ? "DASHED" : pen == Pen.Centre ? "CENTER" : pen == Pen.Moving ? "PHANTOM"
        : Continuous;

    private static IEnumerable<(int Code, string Value)> Entity(Mark mark) => mark switch
    {
        Mark.Line line => line.Points.Zip(line.Points.Skip(1).Concat(line.Points.Take(line.IsFilled ? 1 : 0))).SelectMany(ends =>
            ((int, string)[])[(0, "LINE"), (8, line.Pen.Layer), .. Place(ends.First.X, ends.First.Y, 0),
                .. Place(ends.Second.X, ends.Second.Y, 1)]),
        Mark.Circle circle => [(0, "CIRCLE"), (8, circle.Pen.Layer), .. Place(circle.X, circle.Y, 0), (40, Sheet.Number(circle.Radius))],
        Mark.Text text => [(0, "TEXT"), (8, TextLayer), .. Place(text.X, text.Y, 0), (40, Sheet.Number(text.Height)),
            (1, Ascii(text.Words)), (50, text.IsUpright ? "90" : "0")],
        _ => throw new ArgumentOutOfRangeException(nameof(mark)),
    };

    private static IEnumerable<(int Code, string Value)> Place(double x, double y, int point) =>
        [(10 + point, Sheet.Number(x)), (20 + point, Sheet.Number(y)), (30 + point, "0")];

    /// <summary>Letters beyond ASCII by their number, as drawing programs since release 13 read them.</summary>
    private static string Ascii(string words) => string.Concat(words.Select(letter =>
        letter is >= ' ' and <= '~' ? letter.ToString() : $"\\U+{(int)letter:X4}"));
}
