using System.Text.RegularExpressions;
using FrameOpt.Fit;
using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using static System.FormattableString;

namespace FrameOpt.Forms;

/// <summary>What a filled form says.</summary>
/// <param name="Runs">Those with a reading.</param>
/// <param name="NotMeasured">Names of planned runs without one.</param>
/// <param name="Diagnostics">Everything to correct, each with its cell; nothing is guessed.</param>
public sealed record FormReading(
    IReadOnlyList<MeasuredRun> Runs, IReadOnlyList<string> NotMeasured, IReadOnlyList<Diagnostic> Diagnostics);

/// <summary>Reads a filled form back.</summary>
public static class FormReader
{
    /// <summary>What the first cell of a row says that the builder added.</summary>
    public const string Extra = "extra";

    private const int MostShown = 40;

    /// <summary>The runs of a form.</summary>
    /// <param name="form">Its cells.</param>
    /// <param name="study">Whose machine was measured.</param>
    /// <param name="frame">As built; the form says the lateral offset of each run.</param>
    public static FormReading Read(FilledForm form, Study study, FrameGeometry frame)
    {
        var (errors, runs, empty) = (new List<Diagnostic>(), new List<MeasuredRun>(), new List<string>());
        foreach (var table in FormTable.Of(study.Machine))
        {
            if (form.Sheet(table.Name) is { } sheet)
                ReadSheet(form, sheet, table, new FormRuns(study, frame), (errors, runs, empty));
            else
                errors.Add(new Diagnostic(form.File, 0, 0, "", $"There is no sheet {table.Name}.",
                    "Put it back from the form as it was written; a sheet may stay empty."));
        }

        if (errors.Count == 0 && runs.Count == 0)
            errors.Add(new Diagnostic(form.File, 0, 0, "", "No reading is filled in.", "Fill in at least one row."));
        if (errors.Count == 0)
            errors.AddRange(FormPlausibility.Of(runs, study));
        return new FormReading(runs, empty, [.. errors.Take(MostShown)]);
    }

    private static void ReadSheet(
        FilledForm form, FilledSheet sheet, FormTable table, FormRuns reader,
        (List<Diagnostic> Errors, List<MeasuredRun> Runs, List<string> Empty) into)
    {
        var header = sheet.HeaderRow;
        if (header < 0)
        {
            into.Errors.Add(new Diagnostic($"{form.File}, {sheet.Name}", 0, 0, "", "The row of headers, which begins with run, is missing.",
                "Put it back from the form as it was written."));
            return;
        }

        if (Columns(form, sheet, table, header, into.Errors) is not { } columns)
            return;
        var (numbers, last) = (new HashSet<int>(), 0);
        for (var row = header + 1; row < sheet.Rows.Count; row++)
        {
            var line = new FormRow(form, sheet, row, columns, into.Errors);
            var isFilled = table.Columns.Any(column => !column.IsSetting && column.Title != FormTable.Remarks && line.Has(column.Title));
            if (!line.Has(FormTable.Run))
            {
                if (isFilled)
                    line.Error(FormTable.Run, "Readings stand in a row without the name of a run.",
                        $"Move them back to their run, or write {Extra} here and fill in how it was set.");
                continue;
            }

            if (!IsOfPlan(line, table, numbers, ref last))
                continue;
            if (!isFilled)
                into.Empty.Add(line.Text(FormTable.Run));
            else if (reader.Read(line, table, line.Text(FormTable.Run)) is { } run)
                into.Runs.Add(run);
        }

        Missing(form, sheet, table, numbers, last, into.Errors);
    }

    /// <summary>True for a row that stands as the form was written, or that the builder added.</summary>
    private static bool IsOfPlan(FormRow line, FormTable table, HashSet<int> numbers, ref int last)
    {
        var name = line.Text(FormTable.Run);
        if (name.StartsWith(Extra, StringComparison.OrdinalIgnoreCase))
            return true;
        var match = Regex.Match(name, Invariant($@"^{table.Letter}(?<number>\d\d)-(?<mark>[A-Z]{{2}})$"));
        if (!match.Success)
        {
            line.Error(FormTable.Run, "This is not the name of a run of this sheet.",
                $"Put the name back from the form as it was written, or write {Extra} for a row that you added.");
            return false;
        }

        var number = int.Parse(match.Groups["number"].Value, System.Globalization.CultureInfo.InvariantCulture);
        last = Math.Max(last, number);
        if (!numbers.Add(number))
        {
            line.Error(FormTable.Run, "This run stands here twice.", "Keep the row that was measured.");
            return false;
        }

        var settings = table.Columns.Where(column => column.IsSetting && column.Title != FormTable.Run)
            .Select(column => line.Text(column.Title));
        if (PlannedRun.Mark(settings) == match.Groups["mark"].Value)
            return true;
        line.Error(FormTable.Run, "The settings of this row are not those that the form was written with: a row or a cell was moved.",
            $"Put them back, or write {Extra} here when the run was really set so.");
        return false;
    }

    /// <summary>Rows that were removed: numbers below the largest one that are not there.</summary>
    private static void Missing(
        FilledForm form, FilledSheet sheet, FormTable table, HashSet<int> numbers, int last, List<Diagnostic> errors)
    {
        foreach (var number in Enumerable.Range(1, last).Where(number => !numbers.Contains(number)))
            errors.Add(new Diagnostic($"{form.File}, {sheet.Name}", 0, 0, "", Invariant($"Run {table.Letter}{number:00} is missing."),
                "Put its row back; its readings may stay empty."));
    }

    /// <summary>Where each column stands; null after an error.</summary>
    private static Dictionary<string, (int Index, FormColumn Column, string Unit)>? Columns(
        FilledForm form, FilledSheet sheet, FormTable table, int header, List<Diagnostic> errors)
    {
        var (columns, before) = (new Dictionary<string, (int, FormColumn, string)>(), errors.Count);
        List<string> there = [.. sheet.Rows[header].Select(FilledSheet.Title)];
        foreach (var (i, column) in table.Columns.Index())
        {
            void Error(string what, string fix) => errors.Add(new Diagnostic(sheet.Place(form, header, i), 0, 0,
                VisibleText.Quoted(sheet.Cell(header, i)), what, fix));
            if (i >= there.Count || there[i] != column.Title)
                Error(there.IndexOf(column.Title) is >= 0 and var other
                    ? $"The column {column.Title} belongs here and stands at {sheet.Place(form, header, other).Split('!', ' ')[^1]}."
                    : $"The column {column.Title} belongs here.", "Put the columns back in the order in which the form was written.");
            var unit = FilledSheet.Unit(sheet.Cell(header, i));
            if (column.Dimension is { } dimension && i < there.Count && there[i] == column.Title && dimension.FindUnit(unit) is null)
                Error($"The unit of {column.Title} is not {dimension.Name}.", $"Write one of {dimension.SpellingList} in the brackets.");
            columns[column.Title] = (i, column, unit);
        }

        return errors.Count > before ? null : columns;
    }
}
