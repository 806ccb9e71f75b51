using System.Text.Json;
using FrameOpt.Forms;
using FrameOpt.Reports.Forms;
using Microsoft.JSInterop;

namespace FrameOpt.Web.State;

/// <summary>The flight card as a file: taken from one, saved as one.</summary>
/// <param name="session">The study.</param>
/// <param name="card">Of the study.</param>
/// <param name="device">Reads and writes workbooks beside the page.</param>
public sealed class CardFiles(Session session, Card card, Device device)
{
    /// <summary>Something changed: draw again.</summary>
    public event Action? Changed;

    /// <summary>True while a workbook is read or written.</summary>
    public bool IsBusy { get; private set; }

    /// <summary>Why a file was not taken or not written.</summary>
    public IReadOnlyList<string> Problems { get; private set; } = [];

    /// <summary>True for a file that holds a form of measurements.</summary>
    /// <param name="name">Of the file.</param>
    /// <param name="text">Its content; of a workbook in base64.</param>
    public static bool IsForm(string name, string text) =>
        IsWorkbook(name) || name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)
            && Measuring.Form(text).Sheet("Hang check") is not null;

    /// <summary>Takes a filled form in the place of the card.</summary>
    /// <param name="name">Of the file.</param>
    /// <param name="text">Its content; of a workbook in base64.</param>
    public async Task Take(string name, string text)
    {
        Problems = [];
        if (!IsWorkbook(name))
        {
            Take(Measuring.Form(text) with { File = name });
        }
        else if (await Ask(JsonSerializer.Serialize([name, text], StoredJson.Default.ListString), RunTask.ReadForm) is { } answer)
        {
            var read = JsonSerializer.Deserialize(answer, StoredJson.Default.ListString)!;
            if (read[1].Length > 0)
                Problems = [$"{name}: {read[1]}"];
            else
                Take(Measuring.Form(read[0]) with { File = name });
        }

        Changed?.Invoke();
    }

    /// <summary>Saves the card as a workbook.</summary>
    public async Task SaveWorkbook() =>
        await Ask(JsonSerializer.Serialize(session.Stored, StoredJson.Default.StoredStudy), RunTask.WriteForm);

    /// <summary>Saves the card as text, which a spreadsheet program opens too.</summary>
    public void SaveText() => device.Save(StoredMeasured.FormName, card.Text);

    private void Take(FilledForm filled)
    {
        if (session.AsWritten is not { } study)
            return;
        card.Refresh();
        var design = card.Frame?.Geometry ?? session.Hand;
        var plan = MeasurementForm.Of(study, design, Card.Seed);
        if (plan.Sheets.Any(sheet => filled.Sheet(sheet.Name) is not { HeaderRow: >= 0 }))
            Problems = [.. FormReader.Read(filled, study, design).Diagnostics.Select(found => found.Text)];
        else
            card.Replace(FormCsv.Of(StoredMeasured.FormName, plan.With(filled), study, design));
    }

    private async Task<string?> Ask(string job, RunTask task)
    {
        (IsBusy, Problems) = (true, []);
        Changed?.Invoke();
        try
        {
            return await device.Ask(job, task);
        }
        catch (JSException problem)
        {
            Problems = [problem.Message];
            return null;
        }
        finally
        {
            IsBusy = false;
            Changed?.Invoke();
        }
    }

    private static bool IsWorkbook(string name) => name.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase);
}
