using System.IO.Compression;
using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text;
using System.Text.Json;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Files;
using FrameOpt.Reports.Page;
using FrameOpt.Reports.ProductLine;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.Web.State;

namespace FrameOpt.Web.Work;

/// <summary>Long work, in a worker beside the page: what `frameopt run`, `line` and `fit` do, with the files in memory.</summary>
[SupportedOSPlatform("browser")]
public static partial class RunJob
{
    private static readonly Dictionary<string, byte[]> files = [];

    private static IReadOnlyList<(string Name, Action<Stream> Write)> unwritten = [];

    /// <summary>Runs a study.</summary>
    /// <param name="job">A study as the browser keeps it.</param>
    /// <returns>The answer as JSON.</returns>
    [JSExport]
    public static string Run(string job)
    {
        var stored = JsonSerializer.Deserialize(job, StoredJson.Default.StoredStudy)!;
        var study = StudyFiles.Read(stored).Study!;
        var runner = new StudyRunner(study, 1);
        Follow(runner.Steps());
        Progress(Language.Words.Certainty.Computing, 0, 0);
        var report = RunReport.Of(runner.Result(), new RunInfo(stored.Name, BuildInfo.Version,
            (study.Search as SearchSetting.Evolutionary)?.Seed ?? 0));
        files.Clear();
        unwritten = RunFolder.Files(report, threads: 1);
        return AnswerJson.Write(new RunOutcome(RunAnswer.Of(report.Result), report.Result is
        {
            Chosen: { } chosen, Uncertainty.Bars: { Count: > 0 } bars,
        }
            ? [.. HowSurePictures.Of(study, chosen, bars).Select(picture => picture.ToString())] : [])
        {
            Shares = [.. ModelSharesPictures.Of(report.Result).Select(picture => picture.ToString())],
        });
    }

    /// <summary>Works out the product line of a study: what `frameopt line` does.</summary>
    /// <param name="job">A study as the browser keeps it.</param>
    /// <returns>The answer as JSON.</returns>
    [JSExport]
    public static string RunLine(string job)
    {
        var stored = JsonSerializer.Deserialize(job, StoredJson.Default.StoredStudy)!;
        var run = new ProductLineRun(StudyFiles.Read(stored).Study!, 1);
        Follow(run.Steps());
        var result = run.Result() ?? throw new InvalidOperationException(run.NoCandidatesReason);
        files.Clear();
        var info = new RunInfo(stored.Name, BuildInfo.Version, 0);
        unwritten = ProductLineFolder.Files(new ProductLineReport(result, info));
        if (result.Setting.Customers is { Count: <= CustomerCards.Most } customers)
            unwritten = [.. unwritten, (Language.Words.Line.Cards, stream =>
                new CustomerCards(result, [.. customers.Select(one => CustomerFit.Of(result, one))], info).Write(stream))];
        return AnswerJson.Write(new RunOutcome(ProductLineAnswer.Of(result), []));
    }

    /// <summary>Writes the other files of the run, which takes longest.</summary>
    /// <param name="job">The same study.</param>
    [JSExport]
    public static void WriteFiles(string job)
    {
        if (unwritten.Count == 0)
            return;
        foreach (var file in unwritten)
        {
            Progress(Language.Words.TakeAway.Writing(file.Name), 0, 0);
            Write(file);
        }

        files[Language.Words.TakeAway.Zip] = Zip(JsonSerializer.Deserialize(job, StoredJson.Default.StoredStudy)!);
    }

    /// <summary>Names of the files of the last run.</summary>
    [JSExport]
    public static string[] Names() => [.. files.Keys];

    /// <summary>A file of the last run.</summary>
    [JSExport]
    public static byte[] File(string name) => files[name];

    /// <summary>Makes a file, the only one then.</summary>
    internal static void Keep(string name, Action<Stream> write)
    {
        files.Clear();
        unwritten = [];
        Write((name, write));
    }

    private static void Follow(IEnumerable<RunProgress> steps)
    {
        var told = 0L;
        foreach (var step in steps)
        {
            if (Environment.TickCount64 - told < 80)
                continue;
            told = Environment.TickCount64;
            Progress(step.Stage, step.Done, step.Total);
        }
    }

    private static void Write((string Name, Action<Stream> Write) file)
    {
        using var stream = new MemoryStream();
        file.Write(stream);
        files[file.Name] = stream.ToArray();
    }

    /// <summary>The study, what it reads and its results in one archive.</summary>
    private static byte[] Zip(StoredStudy stored)
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create))
        {
            foreach (var (name, bytes) in stored.Beside.Append(new(stored.Name, stored.Text))
                .Select(pair => (pair.Key, Encoding.UTF8.GetBytes(pair.Value)))
                .Concat(files.Select(pair => ($"results/{pair.Key}", pair.Value))))
            {
                using var entry = zip.CreateEntry(name).Open();
                entry.Write(bytes);
            }
        }

        return stream.ToArray();
    }

    [JSImport("progress", "worker")]
    private static partial void Progress(string stage, double done, double total);
}
