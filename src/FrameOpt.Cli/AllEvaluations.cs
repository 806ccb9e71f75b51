using FrameOpt.Reports.Files;
using FrameOpt.Search;
using FrameOpt.Studies;

namespace FrameOpt.Cli;

/// <summary>evaluations.csv of a run with --all. A disk that refuses it ends the table, not the run.</summary>
internal sealed class AllEvaluations : IDisposable
{
    /// <summary>The name of the file.</summary>
    public const string FileName = "evaluations.csv";

    private readonly string path;
    private EvaluationTable? table;

    /// <summary>Begins the file in a folder that is not yet complete.</summary>
    public AllEvaluations(Study study, ResultsFolder folder)
    {
        path = Path.Combine(folder.Path, FileName);
        Try(() => table = new EvaluationTable(study, File.Create(path)));
    }

    /// <summary>Why there is no such file, or null.</summary>
    public string? Failure { get; private set; }

    /// <summary>Adds a batch.</summary>
    public void Append(EvaluatedBatch batch) => Try(() => table?.Append(batch));

    /// <summary>Ends the file and takes it into the results: where they are saved in another folder, as a copy.</summary>
    public void Include(ResultsFolder folder)
    {
        Close();
        if (Failure is not null)
            return;
        var place = Path.Combine(folder.Path, FileName);
        Try(() =>
        {
            if (place != path)
                File.Copy(path, place);
            folder.Include(FileName);
        });
    }

    /// <inheritdoc/>
    public void Dispose() => Close();

    private void Close()
    {
        var open = table;
        table = null;
        Try(() => open?.Dispose());
    }

    private void Try(Action write)
    {
        if (Failure is not null)
            return;
        try
        {
            write();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Failure = problem.Message;
            Close();
            Discard();
        }
    }

    /// <summary>Half a table is no result.</summary>
    private void Discard()
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // Then the folder goes as well.
        }
    }
}
