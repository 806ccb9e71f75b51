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
    /// <summary>The file that holds the run.</summary>
    public const string RunJsonName = "run.json";

    private const string PageName = "report.html";
    private const string TimingsName = "timings.json";

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

    /// <summary>The files of a run with their names: report.html, run.json, designs.csv, results.xlsx, drawings and templates when there is
    /// a design to build, and plan.csv when the study asks for a plan. Their bytes depend on the run alone.</summary>
    /// <param name="report">The run.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    public static IReadOnlyList<(string Name, Action<Stream> Write)> Files(RunReport report, int threads) =>
    [
        (PageName, stream => ReportPage.Write(report, stream, threads)),
        (RunJsonName, stream => RunJson.Write(report, stream)),
        ("designs.csv", stream => CsvTable.Write(
            FrontTable.Of(report.Result.Study, report.Result.Front, report.FrontEvaluations), stream)),
        .. report.Result.Plan is { } plan ? [("plan.csv", stream => CsvTable.Write(PlanTable.Of(plan), stream))]
            : Array.Empty<(string, Action<Stream>)>(),
        .. DrawingFiles.Of(report),
        ("results.xlsx", stream => RunWorkbook.Write(report, stream)),
    ];

    /// <summary>The names of what <see cref="Write"/> writes, for the message that says so.</summary>
    public static string Names(RunReport report) =>
        string.Join(", ", [.. Files(report, threads: 1).Select(file => file.Name), TimingsName]);

    /// <summary>Writes <see cref="Files"/> and timings.json.</summary>
    /// <param name="report">The run.</param>
    /// <param name="timings">Of the run.</param>
    /// <param name="folder">Not yet complete.</param>
    public static void Write(RunReport report, RunTimings timings, ResultsFolder folder)
    {
        // The page and the workbook take longest and are independent of each other.
        var files = Files(report, timings.Threads).ToLookup(file => file.Name == PageName);
        var page = timings.Threads == 1 ? Task.CompletedTask : Task.Run(() => WriteAll(files[true], folder));
        if (timings.Threads == 1)
            WriteAll(files[true], folder);
        try
        {
            WriteAll(files[false], folder);
        }
        finally
        {
            // Even when another file failed, nothing may write into the folder after this.
            Task.WaitAny(page);
        }

        page.GetAwaiter().GetResult();
        folder.Write(TimingsName, stream => TimingsJson.Write(timings, stream));
    }

    private static void WriteAll(IEnumerable<(string Name, Action<Stream> Write)> files, ResultsFolder folder)
    {
        foreach (var (name, write) in files)
            folder.Write(name, write);
    }
}
