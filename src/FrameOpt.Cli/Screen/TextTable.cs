using System.Text;
using FrameOpt.Reports.Answer;

namespace FrameOpt.Cli.Screen;

/// <summary>A table as lines of text for any width of terminal. No figure is ever broken or cut: long words of text wrap; where the columns
/// do not fit beside each other the table goes on below, with its first column repeated.</summary>
internal static class TextTable
{
    private const int Indent = 2;
    private const int Gap = 3;
    private const int MaxNameWidth = 34;

    /// <summary>Text is wrapped to no less than this; shorter cells, and so all figures with their units, stay whole.</summary>
    private const int ShortestWrap = 24;

    /// <summary>The lines of a table.</summary>
    /// <param name="table">Figures are right-aligned.</param>
    /// <param name="width">Columns of the terminal.</param>
    public static IEnumerable<string> Lines(AnswerTable table, int width)
    {
        var columns = Enumerable.Range(0, table.Headers.Count).Select(c => new TextColumn(table, c)).ToList();
        foreach (var (number, block) in Blocks(columns, width).Index())
        {
            if (number > 0)
                yield return "";
            foreach (var line in Block(table, block))
                yield return line;
        }
    }

    /// <summary>Columns that fit beside each other, each with its width; the first column leads every block.</summary>
    private static IEnumerable<IReadOnlyList<(TextColumn Column, int Width)>> Blocks(IReadOnlyList<TextColumn> columns, int width)
    {
        var name = columns[0];
        if (name.Natural > MaxNameWidth)
            name = name with { Natural = Math.Max(name.LongestWord, MaxNameWidth) };
        var from = 1;
        do
        {
            var block = new List<TextColumn> { name };
            var used = Indent + name.Shortest;
            while (from < columns.Count && (block.Count == 1 || used + Gap + columns[from].Shortest <= width))
            {
                used += Gap + columns[from].Shortest;
                block.Add(columns[from++]);
            }

            yield return Widen(block, width - used);
        }
        while (from < columns.Count);
    }

    /// <summary>Gives the columns what they need beyond their shortest width, from the left, as far as there is room.</summary>
    private static List<(TextColumn, int)> Widen(IReadOnlyList<TextColumn> block, int room)
    {
        var widths = new List<(TextColumn, int)>();
        foreach (var column in block)
        {
            var more = Math.Clamp(column.Natural - column.Shortest, 0, Math.Max(0, room));
            room -= more;
            widths.Add((column, column.Shortest + more));
        }

        return widths;
    }

    private static IEnumerable<string> Block(AnswerTable table, IReadOnlyList<(TextColumn Column, int Width)> block)
    {
        foreach (var line in Row(table.Headers, block))
            yield return line;
        yield return new string('─', Indent + block.Sum(item => item.Width) + Gap * (block.Count - 1));
        foreach (var row in table.Rows.Where(row => table.Headers.Count == block.Count
            || block.Skip(1).Any(item => row[item.Column.Index].Length > 0)))
        {
            foreach (var line in Row(row, block))
                yield return line;
        }
    }

    private static IEnumerable<string> Row(IReadOnlyList<string> cells, IReadOnlyList<(TextColumn Column, int Width)> block)
    {
        var wrapped = block.Select(item => Wrap(cells[item.Column.Index], item.Width)).ToList();
        for (var l = 0; l < wrapped.Max(lines => lines.Count); l++)
        {
            var text = new StringBuilder();
            foreach (var (b, (column, width)) in block.Index())
            {
                var part = l < wrapped[b].Count ? wrapped[b][l] : "";
                text.Append(' ', b == 0 ? Indent : Gap).Append(column.IsNumeric ? part.PadLeft(width) : part.PadRight(width));
            }

            yield return text.ToString().TrimEnd();
        }
    }

    private static List<string> Wrap(string text, int width)
    {
        var lines = new List<string>();
        foreach (var word in text.Split(' '))
        {
            if (lines.Count > 0 && lines[^1].Length + 1 + word.Length <= width)
                lines[^1] += $" {word}";
            else
                lines.Add(word);
        }

        return lines;
    }

    /// <summary>One column with the widths it can have.</summary>
    private sealed record TextColumn
    {
        public TextColumn(AnswerTable table, int index)
        {
            Index = index;
            var cells = table.Rows.Select(row => row[index]).ToList();
            IsNumeric = index > 0 && 2 * cells.Count(cell => cell.Length > 0 && (char.IsAsciiDigit(cell[0]) || cell[0] is '-' or '∞'))
                > cells.Count(cell => cell.Length > 0);
            LongestWord = Words(cells.Append(table.Headers[index]));
            Natural = cells.Append(table.Headers[index]).Max(cell => cell.Length);
            var whole = cells.Where(cell => cell.Length <= ShortestWrap).Select(cell => cell.Length).DefaultIfEmpty(0).Max();
            Shortest = Math.Max(Math.Max(LongestWord, whole), cells.Any(cell => cell.Length > ShortestWrap) ? ShortestWrap : 0);
        }

        public int Index { get; }

        public bool IsNumeric { get; }

        public int LongestWord { get; }

        /// <summary>With no wrapping.</summary>
        public int Natural { get; init; }

        /// <summary>With headers and long texts wrapped between words.</summary>
        public int Shortest { get; }

        private static int Words(IEnumerable<string> texts) => texts.SelectMany(text => text.Split(' ')).Max(word => word.Length);
    }
}
