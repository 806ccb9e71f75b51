using FrameOpt.Reports;
using FrameOpt.Studies;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>Puts answers, tables and mistakes on a terminal.</summary>
internal static class Screen
{
    public static void Answer(IAnsiConsole console, Answer answer)
    {
        console.WriteLine();
        console.Write(new Text(answer.Title, new Style(decoration: Decoration.Bold)));
        console.WriteLine();
        if (answer.Question.Length > 0)
            console.WriteLine(answer.Question);
        console.WriteLine();
        console.Write(new Text(answer.Headline, new Style(answer.IsWarning ? Color.Orange3 : Color.DodgerBlue1, decoration: Decoration.Bold)));
        console.WriteLine();
        foreach (var section in answer.Sections)
        {
            console.WriteLine();
            console.Write(new Text(section.Title, new Style(decoration: Decoration.Bold)));
            console.WriteLine();
            foreach (var line in section.Lines)
                console.Write(new Padder(new Text(line), new Padding(2, 0, 0, 0)));
            if (section.Table is { } table)
                Table(console, table);
        }
    }

    public static void Table(IAnsiConsole console, AnswerTable table)
    {
        var grid = new Table { Border = TableBorder.Minimal, ShowRowSeparators = false };
        for (var c = 0; c < table.Headers.Count; c++)
        {
            var column = new TableColumn(new Text(table.Headers[c])) { NoWrap = true };
            grid.AddColumn(IsNumeric(table, c) ? column.RightAligned() : column);
        }

        foreach (var row in table.Rows)
            grid.AddRow(row.Select(cell => new Text(cell)));
        console.Write(grid);
    }

    public static void Mistakes(Terminal terminal, string file, IReadOnlyList<Mistake> mistakes)
    {
        terminal.Error.WriteLine($"{file}: {(mistakes.Count == 1 ? "one thing" : $"{mistakes.Count} things")} to mend.");
        foreach (var mistake in mistakes)
        {
            terminal.Error.Write(new Text($"  {mistake.Text}"));
            terminal.Error.WriteLine();
        }
    }

    /// <summary>A column of figures, which reads best flush right.</summary>
    private static bool IsNumeric(AnswerTable table, int column) =>
        column > 0 && table.Rows.All(row => row[column].Length == 0 || char.IsAsciiDigit(row[column][0]) || row[column][0] is '-' or '∞');
}
