using System.Text;
using FrameOpt.Reports.Answer;
using FrameOpt.StudyFile.Syntax;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace FrameOpt.Cli.Screen;

/// <summary>Writes answers, tables and diagnostics to a terminal.</summary>
internal static class ConsoleWriter
{
    private const int MaxNameWidth = 34;

    public static void WriteAnswer(IAnsiConsole console, RunAnswer answer)
    {
        console.WriteLine();
        console.Write(new Text(answer.Title, new Style(decoration: Decoration.Bold)));
        console.WriteLine();
        if (answer.Question.Length > 0)
            console.WriteLine(answer.Question);
        console.WriteLine();
        console.Write(new Text(answer.Headline, new Style(answer.IsWarning ? Color.Orange3 : Color.DodgerBlue1,
            decoration: Decoration.Bold)));
        console.WriteLine();
        WriteSections(console, answer.Sections);
    }

    /// <summary>Sections one after the other.</summary>
    public static void WriteSections(IAnsiConsole console, IEnumerable<AnswerSection> sections)
    {
        foreach (var section in sections)
        {
            console.WriteLine();
            console.Write(new Text(section.Title, new Style(decoration: Decoration.Bold)));
            console.WriteLine();
            foreach (var line in section.Lines)
                console.Write(new Padder(new Text(line), new Padding(2, 0, 0, 0)));
            if (section.Table is { } table)
                WriteTable(console, table);
        }
    }

    /// <summary>A table of figures; columns of numbers are right-aligned.</summary>
    public static void WriteTable(IAnsiConsole console, AnswerTable table)
    {
        foreach (var line in TextTable.Lines(table, Terminal.IsPipe(console) ? int.MaxValue : console.Profile.Width))
            console.WriteLine(line);
    }

    /// <summary>A title and lines that each have a name and a text.</summary>
    public static void WriteList(IAnsiConsole console, string title, IEnumerable<IReadOnlyList<string>> rows)
    {
        console.WriteLine();
        console.Write(new Text(title, new Style(decoration: Decoration.Bold)));
        console.WriteLine();
        var grid = new Grid();
        IReadOnlyList<IReadOnlyList<string>> lines = [.. rows];
        foreach (var row in lines)
        {
            while (grid.Columns.Count < row.Count)
                grid.AddColumn(new GridColumn { Padding = new Padding(2, 0, 0, 0) });
            grid.AddRow([.. row.Select(cell => new Text(cell))]);
        }

        if (lines.Count > 0)
            (grid.Columns[0].Width, grid.Columns[0].NoWrap) = (NameWidth(lines.Select(row => row[0])), true);
        Write(console, grid);
    }

    public static void WriteDiagnostics(Terminal terminal, string file, IReadOnlyList<Diagnostic> diagnostics)
    {
        var shown = string.IsNullOrWhiteSpace(file) ? "study" : VisibleText.Path(file);
        terminal.Error.WriteLine($"{shown}: {(diagnostics.Count == 1 ? "one error" : $"{diagnostics.Count} errors")} to correct.");
        foreach (var diagnostic in diagnostics)
        {
            terminal.Error.Write(new Text($"  {diagnostic.Text}"));
            terminal.Error.WriteLine();
        }
    }

    /// <summary>Warnings, each on a line of the stream for errors.</summary>
    public static void WriteWarnings(Terminal terminal, IReadOnlyList<string> warnings)
    {
        foreach (var warning in warnings)
            terminal.Error.WriteLine($"Warning: {warning}");
    }

    /// <summary>The width of the column of names: that of its longest name; long names wrap, but no word is broken.</summary>
    private static int NameWidth(IEnumerable<string> names)
    {
        var all = names.ToList();
        var longestWord = all.SelectMany(name => name.Split(' ')).Max(word => word.Length);
        return Math.Max(longestWord, Math.Min(all.Max(name => name.Length), MaxNameWidth));
    }

    /// <summary>Writes a block without the trailing spaces that pad its lines to the full width.</summary>
    private static void Write(IAnsiConsole console, IRenderable block)
    {
        var text = new StringBuilder();
        foreach (var segment in block.Render(RenderOptions.Create(console, console.Profile.Capabilities), console.Profile.Width))
            text.Append(segment.IsLineBreak ? "\n" : segment.Text);
        foreach (var line in text.ToString().Split('\n').Select(line => line.TrimEnd()).Where(line => line.Length > 0))
            console.WriteLine(line);
    }
}
