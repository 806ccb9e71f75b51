using System.Text.Json;
using Microsoft.JSInterop;

namespace FrameOpt.Web.State;

/// <summary>The table of measured runs, kept beside the study.</summary>
/// <param name="session">The study.</param>
/// <param name="device">Reads files and makes the runs of a plan beside the page.</param>
public sealed class RunsTable(Session session, Device device)
{
    /// <summary>Something changed: draw again.</summary>
    public event Action? Changed;

    /// <summary>True while a file is read, or the runs of a plan are made.</summary>
    public bool IsBusy { get; private set; }

    /// <summary>Why that did not succeed; empty where it did.</summary>
    public string Problem { get; private set; } = "";

    /// <summary>How it is analysed.</summary>
    public StoredRuns How => session.Stored.Runs ?? StoredRuns.None;

    /// <summary>As text.</summary>
    public string Text => session.Stored.Beside.GetValueOrDefault(StoredRuns.FileName, "");

    /// <summary>Replaces it by what was typed or pasted.</summary>
    public void Write(string text) => session.KeepRuns(How, PastedTable.AsCsv(text));

    /// <summary>Analyses it otherwise.</summary>
    public void Choose(StoredRuns how) => session.KeepRuns(how, Text);

    /// <summary>Takes a file.</summary>
    /// <param name="name">Of the file.</param>
    /// <param name="text">Its content; of a workbook in base64.</param>
    public async Task Take(string name, string text)
    {
        if (!name.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase))
        {
            Write(text);
        }
        else if (await Ask(JsonSerializer.Serialize([name, text], StoredJson.Default.ListString), RunTask.ReadTable) is { } answer)
        {
            var read = JsonSerializer.Deserialize(answer, StoredJson.Default.ListString)!;
            if (read[1].Length == 0)
                Write(read[0]);
            else
                Problem = $"{name}: {read[1]}";
        }

        Changed?.Invoke();
    }

    /// <summary>Begins with the runs of the study's plan.</summary>
    public async Task TakePlan()
    {
        if (await Ask(JsonSerializer.Serialize(session.Stored, StoredJson.Default.StoredStudy), RunTask.PlanRuns) is { } table)
            Write(table);
    }

    /// <summary>Saves it as a file.</summary>
    public void Save() => device.Save(StoredRuns.FileName, Text);

    private async Task<string?> Ask(string job, RunTask task)
    {
        (IsBusy, Problem) = (true, "");
        Changed?.Invoke();
        try
        {
            return await device.Ask(job, task);
        }
        catch (JSException problem)
        {
            Problem = problem.Message;
            return null;
        }
        finally
        {
            IsBusy = false;
            Changed?.Invoke();
        }
    }
}
