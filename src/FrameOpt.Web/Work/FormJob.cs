using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text;
using System.Text.Json;
using FrameOpt.Forms;
using FrameOpt.Plans;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Files;
using FrameOpt.Reports.Forms;
using FrameOpt.Reports.Runs;
using FrameOpt.Reports.Tables;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.Web.State;

namespace FrameOpt.Web.Work;

/// <summary>Work on measurements, in a worker beside the page: what `frameopt form`, `fit --measured` and `analyse` do.</summary>
[SupportedOSPlatform("browser")]
public static partial class FormJob
{
    /// <summary>Fits a study to its flight card.</summary>
    /// <param name="job">A study as the browser keeps it.</param>
    /// <returns>The answer as JSON.</returns>
    [JSExport]
    public static string Fit(string job)
    {
        var (stored, study) = Opened(job);
        return AnswerJson.Write(Measuring.Fit(stored, study, Language.Words.Scales.Taking));
    }

    /// <summary>Writes the flight card of a study as a workbook.</summary>
    /// <param name="job">A study as the browser keeps it.</param>
    [JSExport]
    public static string WriteForm(string job)
    {
        var (stored, study) = Opened(job);
        var frame = Measuring.Built(stored, study).Geometry;
        var form = MeasurementForm.Of(study, frame, Card.Seed).With(Measuring.Form(stored));
        RunJob.Keep(Path.ChangeExtension(StoredMeasured.FormName, ".xlsx"), stream =>
            FormWorkbook.Write(form, study, frame, new RunInfo(stored.Name, BuildInfo.Version, Card.Seed), stream));
        return "";
    }

    /// <summary>Reads a filled form, a workbook or text.</summary>
    /// <param name="job">Name and content in base64, as JSON.</param>
    /// <returns>The form as text and what is wrong with the file, as JSON: one of the two is empty.</returns>
    [JSExport]
    public static string ReadForm(string job)
    {
        var file = JsonSerializer.Deserialize(job, StoredJson.Default.ListString)!;
        var form = FilledFormFile.Read(Placed(file[0], Convert.FromBase64String(file[1])), out var problem);
        return JsonSerializer.Serialize([form is null ? "" : Measuring.Text(form), problem], StoredJson.Default.ListString);
    }

    /// <summary>Reads a table of runs, a workbook or text.</summary>
    /// <param name="job">Name and content in base64, as JSON.</param>
    /// <returns>The table as text and what is wrong with the file, as JSON: one of the two is empty.</returns>
    [JSExport]
    public static string ReadTable(string job)
    {
        var file = JsonSerializer.Deserialize(job, StoredJson.Default.ListString)!;
        var table = FilledFormFile.ReadTable(Placed(file[0], Convert.FromBase64String(file[1])), out var problem);
        return JsonSerializer.Serialize(
            [table?.Sheets.FirstOrDefault(sheet => sheet.Rows.Count > 0) is { } sheet ? PastedTable.AsCsv(sheet.Rows) : "", problem],
            StoredJson.Default.ListString);
    }

    /// <summary>The runs of the study's plan with an empty cell for each that is measured: what `frameopt plan --csv` writes.</summary>
    /// <param name="job">A study as the browser keeps it.</param>
    [JSExport]
    public static string PlanRuns(string job)
    {
        var study = StudyFiles.Read(JsonSerializer.Deserialize(job, StoredJson.Default.StoredStudy)!).Study!;
        using var stream = new MemoryStream();
        CsvTable.Write(PlanTable.ToMeasure(PlanRunner.Run(study, StudyProblem.Model(study), 1), PlanTable.Seed), stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>Analyses measured runs: what `frameopt analyse` does.</summary>
    /// <param name="job">A study as the browser keeps it, with the runs beside it.</param>
    /// <returns>The answer as JSON.</returns>
    [JSExport]
    public static string Analyse(string job)
    {
        var stored = JsonSerializer.Deserialize(job, StoredJson.Default.StoredStudy)!;
        var how = stored.Runs ?? StoredRuns.None;
        var table = FilledFormFile.ReadTable(
            Placed(StoredRuns.FileName, Encoding.UTF8.GetBytes(stored.Beside.GetValueOrDefault(StoredRuns.FileName, ""))), out var problem);
        IReadOnlyList<Diagnostic> findings = [];
        var request = new RunAnalysisRequest(new RunTableRequest([], [], []),
            RunAnalysisRequest.Models.Where(one => one.Word == how.Terms).Select(one => (SurfaceModel?)one.Model).FirstOrDefault(),
            how.IsSelected, how.Goals.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
        if (table is null || RunTableAnswer.Of(table, request, StudyFiles.Read(stored).Study, out findings) is not { } answer)
            return AnswerJson.Write(new RunOutcome(new RunAnswer("", "", Language.Words.Runs.Refused, true,
                [new AnswerSection("To correct", problem.Length > 0 ? [problem] : [.. findings.Select(finding => finding.Text)])]), []));
        RunJob.Keep(Language.Words.Runs.Page, stream => RunAnalysisPage.Write(answer, stream));
        return AnswerJson.Write(new RunOutcome(new RunAnswer("", "", "", false, answer.Sections), answer.Pictures));
    }

    private static string Placed(string name, byte[] content)
    {
        var path = Path.Combine(Path.GetTempPath(), Path.GetFileName(name));
        File.WriteAllBytes(path, content);
        return path;
    }

    private static (StoredStudy Stored, Study Study) Opened(string job)
    {
        var stored = JsonSerializer.Deserialize(job, StoredJson.Default.StoredStudy)! with { Variant = "" };
        return (stored, StudyFiles.Read(stored).Study!);
    }
}
