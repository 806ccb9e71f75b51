using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text.Json;
using FrameOpt.Forms;
using FrameOpt.Reports.Files;
using FrameOpt.Reports.Forms;
using FrameOpt.Studies;
using FrameOpt.Web.State;

namespace FrameOpt.Web.Work;

/// <summary>Work on the form of measurements, in a worker beside the page: what `frameopt form` and `fit --measured` do.</summary>
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
        var path = Path.Combine(Path.GetTempPath(), Path.GetFileName(file[0]));
        File.WriteAllBytes(path, Convert.FromBase64String(file[1]));
        var form = FilledFormFile.Read(path, out var problem);
        return JsonSerializer.Serialize([form is null ? "" : Measuring.Text(form), problem], StoredJson.Default.ListString);
    }

    private static (StoredStudy Stored, Study Study) Opened(string job)
    {
        var stored = JsonSerializer.Deserialize(job, StoredJson.Default.StoredStudy)! with { Variant = "" };
        return (stored, StudyFiles.Read(stored).Study!);
    }
}
