using FrameOpt.Forms;
using FrameOpt.Model;
using FrameOpt.Reports.Forms;
using FrameOpt.Running;
using FrameOpt.Studies;

namespace FrameOpt.Web.State;

/// <summary>The flight card of the study that is open: its form of measurements, filled in run by run and kept beside it.</summary>
/// <param name="session">The study.</param>
public sealed class Card(Session session)
{
    /// <summary>The order of the runs is that of the command form.</summary>
    public const uint Seed = 1;

    /// <summary>The card that another one took the place of.</summary>
    private const string EarlierName = "measurements-before.csv";

    private (string Text, Study? Study, double[]? Built) read = ("", null, null);
    private FilledForm form = Measuring.Form("");

    /// <summary>Its sheets; none before it is begun.</summary>
    public IReadOnlyList<CardSheet> Sheets { get; private set; } = [];

    /// <summary>The frame that it is for; null before it is begun.</summary>
    public MeasuredFrame? Frame { get; private set; }

    /// <summary>Flights that the model holds to be unsafe, and why.</summary>
    public IReadOnlyList<string> LeftOut { get; private set; } = [];

    /// <summary>What is to correct.</summary>
    public IReadOnlyList<CardFinding> Findings { get; private set; } = [];

    /// <summary>True once something is filled in.</summary>
    public bool IsFilled => Sheets.Any(sheet => sheet.Rows.Any(sheet.IsFilled));

    /// <summary>True when another card took the place of a filled one.</summary>
    public bool HasEarlier => session.Stored.Beside.ContainsKey(EarlierName);

    /// <summary>The card as text.</summary>
    public string Text => read.Text;

    /// <summary>Reads the card as it is kept, if it is another one than before.</summary>
    public void Refresh()
    {
        var now = (session.Stored.Beside.GetValueOrDefault(StoredMeasured.FormName, ""), session.AsWritten, session.Measured.Built);
        if (now == read || now.AsWritten is null)
            return;
        (read, form) = (now, Measuring.Form(now.Item1));
        Check();
    }

    /// <summary>Begins a card for a design, or says that a filled one was measured on it.</summary>
    public void Begin(FrameGeometry design)
    {
        var measured = session.Measured with { Built = StoredStudy.Numbers(design) };
        if (IsFilled)
            Keep(form, measured);
        else
            Keep(Empty(session.AsWritten!, design), measured with { Done = [] });
        Check();
    }

    /// <summary>Puts an empty card in the place of this one.</summary>
    public void Clear() => Replace(Empty(session.AsWritten!, Frame!.Geometry));

    /// <summary>Changes places with the card before.</summary>
    public void PutBack() => Replace(Measuring.Form(session.Stored.Beside[EarlierName]));

    /// <summary>Puts another card in the place of this one, which is kept if something is filled in.</summary>
    public void Replace(FilledForm other)
    {
        var measured = session.Measured with { Built = session.Measured.Built ?? StoredStudy.Numbers(session.Hand), Done = [] };
        Keep(other, measured, IsFilled ? [(EarlierName, read.Text)] : []);
        Check();
    }

    /// <summary>Types into a cell.</summary>
    /// <param name="sheet">Of the card.</param>
    /// <param name="row">Of the sheet.</param>
    /// <param name="column">Of the sheet.</param>
    /// <param name="text">So far.</param>
    /// <param name="isOver">True when the typing has ended: then the card is checked.</param>
    public void Type(CardSheet sheet, int row, int column, string text, bool isOver)
    {
        var typed = isOver ? Typed.Of(text, null, "") : text;
        IReadOnlyList<string> Filled(IReadOnlyList<string> cells) =>
            [.. Enumerable.Range(0, sheet.Columns).Select(c => c == column ? typed : c < cells.Count ? cells[c] : "")];
        Keep(With(sheet, [.. form.Sheets[sheet.Index].Rows.Select((cells, r) => r == row ? Filled(cells) : cells)]), session.Measured);
        if (isOver)
            Check();
    }

    /// <summary>Adds a run of one's own to a sheet.</summary>
    public void AddRun(CardSheet sheet)
    {
        Keep(With(sheet, [.. sheet.Cells.Rows, [FormReader.Extra, .. Enumerable.Repeat("", sheet.Columns - 1)]]), session.Measured);
        Check();
    }

    /// <summary>Takes such a run away.</summary>
    public void RemoveRun(CardSheet sheet, int row)
    {
        Keep(With(sheet, [.. sheet.Cells.Rows.Where((_, r) => r != row)]), session.Measured with
        {
            Done = [.. session.Measured.Done.Where(one => one != Key(sheet, row))],
        });
        Check();
    }

    /// <summary>True for a run that is ticked.</summary>
    public bool IsDone(CardSheet sheet, int row) => session.Measured.Done.Contains(Key(sheet, row));

    /// <summary>Ticks a run, or takes the tick away.</summary>
    public void Tick(CardSheet sheet, int row)
    {
        var done = session.Measured.Done;
        session.KeepMeasured(session.Measured with
        {
            Done = IsDone(sheet, row) ? [.. done.Where(one => one != Key(sheet, row))] : [.. done, Key(sheet, row)],
        });
    }

    /// <summary>What is to correct in a cell.</summary>
    public IEnumerable<CardFinding> FindingsOf(CardSheet sheet, int row, int? column = null) => Findings.Where(one =>
        one.Sheet?.Index == sheet.Index && one.Row == row && (column is null || one.Column == column));

    private static string Key(CardSheet sheet, int row) => $"{sheet.Plan.Name}!{row}";

    private static FilledForm Empty(Study study, FrameGeometry design) =>
        FormCsv.Of(StoredMeasured.FormName, MeasurementForm.Of(study, design, Seed), study, design);

    private FilledForm With(CardSheet sheet, IReadOnlyList<IReadOnlyList<string>> rows) => form with
    {
        Sheets = [.. form.Sheets.Select((one, s) => s == sheet.Index ? one with { Rows = rows } : one)],
    };

    private void Keep(FilledForm other, StoredMeasured measured, params IEnumerable<(string Name, string Text)> files)
    {
        (form, read) = (other, (Measuring.Text(other), session.AsWritten, measured.Built));
        session.KeepMeasured(measured, [.. files, (StoredMeasured.FormName, read.Text)]);
    }

    /// <summary>Looks through the whole card.</summary>
    private void Check()
    {
        (Sheets, LeftOut, Findings, Frame) = ([], [], [], null);
        if (read.Study is not { } study || read.Text.Length == 0)
            return;
        Frame = Measuring.Built(session.Stored, study);
        var plan = MeasurementForm.Of(study, Frame.Geometry, Seed);
        LeftOut = plan.LeftOut;
        Sheets =
        [
            .. from sheet in plan.Sheets
               let cells = form.Sheet(sheet.Name)
               where cells is { HeaderRow: >= 0 }
               select new CardSheet(form.Sheets.ToList().IndexOf(cells), sheet, FormNotes.Of(study, Frame.Geometry, sheet), cells),
        ];
        var found = FormReader.Read(form, study, Frame.Geometry).Diagnostics;
        Findings = [.. found.Where(_ => IsFilled || Sheets.Count < plan.Sheets.Count).Select(Placed)];
    }

    private CardFinding Placed(StudyFile.Syntax.Diagnostic found)
    {
        var places = from sheet in Sheets
                     from row in sheet.Rows.Append(sheet.HeaderRow)
                     from column in Enumerable.Range(0, sheet.Columns)
                     where sheet.Cells.Place(form, row, column) == found.File
                     select new CardFinding(sheet, row, column, found);
        return places.FirstOrDefault() ?? new CardFinding(null, 0, 0, found);
    }
}
