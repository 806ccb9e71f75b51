using System.Text;
using FrameOpt.Fit;
using FrameOpt.Forms;
using FrameOpt.Model;
using FrameOpt.Reports.Forms;
using FrameOpt.Running;
using FrameOpt.Studies;

namespace FrameOpt.Web.State;

/// <summary>What was measured on a frame of a study, as the command fit takes it.</summary>
public static class Measuring
{
    /// <summary>A design as the frame that was measured.</summary>
    /// <param name="stored">The study file.</param>
    /// <param name="study">As read from it, without a variant.</param>
    /// <param name="design">What the study varies is taken of it.</param>
    public static MeasuredFrame Frame(StoredStudy stored, Study study, FrameGeometry design)
    {
        var built = Designs.On(study, design);
        return new MeasuredFrame(stored.Text, StudyFiles.Folder, study, [.. study.Factors.Select(factor => factor.At(built[factor.Input]))],
            built, 1);
    }

    /// <summary>The frame that the flight card is for; its lateral offset is the one that most of the runs say.</summary>
    public static MeasuredFrame Built(StoredStudy stored, Study study)
    {
        var frame = Frame(stored, study,
            StoredStudy.Geometry(stored.Measured?.Built) ?? StoredStudy.Geometry(stored.Hand) ?? Designs.First(study));
        var offset = FormReader.Read(Form(stored), study, frame.Geometry).Runs.Select(OffsetMetres).OfType<double>()
            .GroupBy(metres => metres).MaxBy(runs => runs.Count())?.Key;
        return offset is { } said ? Frame(stored, study, frame.Geometry with { OffsetMetres = said }) : frame;
    }

    /// <summary>The flight card of a study; without sheets where there is none.</summary>
    public static FilledForm Form(StoredStudy stored) => Form(stored.Beside.GetValueOrDefault(StoredMeasured.FormName, ""));

    /// <summary>A form from its text; without sheets where it is none.</summary>
    public static FilledForm Form(string text)
    {
        try
        {
            return FormCsv.Read(StoredMeasured.FormName, Encoding.UTF8.GetBytes(text));
        }
        catch (Exception problem) when (problem is FormatException or ArgumentException or InvalidOperationException
            or InvalidDataException)
        {
            return new FilledForm(StoredMeasured.FormName, true, []);
        }
    }

    /// <summary>A form as text.</summary>
    public static string Text(FilledForm form)
    {
        using var stream = new MemoryStream();
        FormCsv.Write(form, stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>What the flight card says, today.</summary>
    /// <param name="stored">The study file and its card.</param>
    /// <param name="study">As read from it, without a variant.</param>
    /// <param name="taking">How to take the corrected study over.</param>
    public static RunOutcome Fit(StoredStudy stored, Study study, string taking)
    {
        var answer = FitAnswer.OfForm(Built(stored, study), Form(stored), DateOnly.FromDateTime(DateTime.Now), taking, out var refusal);
        return RunOutcome.Of(study, answer, refusal);
    }

    private static double? OffsetMetres(MeasuredRun run) => run switch
    {
        MeasuredRun.Hang hang => hang.Hung.OffsetMetres,
        MeasuredRun.Angle angle => angle.Hung.OffsetMetres,
        MeasuredRun.Flight flight => flight.Flown.OffsetMetres,
        _ => null,
    };
}
