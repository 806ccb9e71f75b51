using System.Globalization;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Page;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Workbook;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Files;

/// <summary>The folder a run writes: plain files, all of them or none.</summary>
public static class RunFolder
{
    /// <summary>The file by which a folder of results is known.</summary>
    public const string RunJsonName = "run.json";

    /// <summary>results/&lt;UTC time&gt;-&lt;first 8 of the study's hash&gt; beside the study, then the variant's name in plain
    /// letters.</summary>
    /// <param name="studyPath">Of the study file.</param>
    /// <param name="studyHash">Hexadecimal, 8 characters or more.</param>
    /// <param name="utc">When the run started.</param>
    /// <param name="variant">Name of the variant, or nothing.</param>
    public static string DefaultPath(string studyPath, string studyHash, DateTime utc, string variant = "")
    {
        var beside = Path.GetDirectoryName(Path.GetFullPath(studyPath))!;
        var name = string.Concat(variant.Take(40).Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : '-'));
        return Path.Combine(
            beside, "results",
            $"{utc.ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture)}-{studyHash[..8]}{(name.Length > 0 ? "-" : "")}{name}");
    }

    /// <summary>The path if nothing stands there, else the first free one of path-2, path-3 ...: two runs may begin in one
    /// second.</summary>
    /// <param name="path">Where results would go.</param>
    public static string FirstFreePath(string path)
    {
        var unused = path;
        for (var number = 2; Path.Exists(unused); number++)
            unused = FormattableString.Invariant($"{path}-{number}");
        return unused;
    }

    /// <summary>Why results may not go there, in words, or null when they may. Ask before the run, not after it.</summary>
    /// <param name="path">Where they should go.</param>
    /// <param name="replace">True when an older result there may be lost.</param>
    public static string? WriteObstacle(string path, bool replace) => AtomicFolder.WriteObstacle(path, replace, RunJsonName);

    /// <summary>Writes results.xlsx, report.html, designs.csv, run.json and timings.json, and plan.csv when the study asks for a
    /// plan.</summary>
    /// <param name="report">The run.</param>
    /// <param name="timings">Of the run.</param>
    /// <param name="path">The folder; made with its parents.</param>
    /// <param name="replace">True to put the new results in the place of older ones.</param>
    /// <param name="evaluations">A closed file written by <see cref="EvaluationTable"/> on the same disk, to move in as evaluations.csv; or
    /// null.</param>
    /// <exception cref="IOException"><see cref="WriteObstacle"/> has a reason, or the disk refuses; what stood there before stands there
    /// still.</exception>
    public static void Write(RunReport report, RunTimings timings, string path, bool replace, string? evaluations = null)
    {
        if (WriteObstacle(path, replace) is { } reason)
            throw new IOException(reason);
        AtomicFolder.Write(path, replace, folder =>
        {
            // The page and the workbook take longest and are independent of each other.
            var page = Task.Run(() => AtomicFolder.WriteFile(folder, "report.html", stream => ReportPage.Write(report, stream)));
            try
            {
                AtomicFolder.WriteFile(folder, RunJsonName, stream => RunJson.Write(report, stream));
                AtomicFolder.WriteFile(folder, "designs.csv", stream => CsvTable.Write(
                    FrontTable.Of(report.Result.Study, report.Result.Front, report.FrontEvaluations), stream));
                if (report.Result.Plan is { } plan)
                    AtomicFolder.WriteFile(folder, "plan.csv", stream => CsvTable.Write(PlanTable.Of(plan), stream));
                AtomicFolder.WriteFile(folder, "results.xlsx", stream => RunWorkbook.Write(report, stream));
            }
            finally
            {
                // Even when another file failed, nothing may write into the folder after this.
                Task.WaitAny(page);
            }

            page.GetAwaiter().GetResult();
            AtomicFolder.WriteFile(folder, "timings.json", stream => TimingsJson.Write(timings, stream));
            if (evaluations is not null)
                File.Move(evaluations, Path.Combine(folder, "evaluations.csv"));
        });
    }
}
