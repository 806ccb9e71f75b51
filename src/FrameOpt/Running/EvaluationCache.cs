using System.Globalization;
using System.Text;
using FrameOpt.Search;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.Running;

/// <summary>Evaluations cached in a text file during a search, so that the same run continues where it stopped or was killed.</summary>
/// <remarks>Every line is one design: the pass, its values in m and rad, its failure code (0 for none), its objectives oriented so that
/// smaller is better, its limits' values, and a checksum of all that; shortest decimals that read back to the same bits. A last line that
/// was not written to its end is dropped; any other line that does not agree with its checksum makes the file unusable.</remarks>
public sealed class EvaluationCache : IDisposable
{
    private readonly Dictionary<string, double[]> cached;
    private readonly FileStream file;
    private readonly StringBuilder lines = new();

    private EvaluationCache(FileStream file, Dictionary<string, double[]> cached)
    {
        this.file = file;
        this.cached = cached;
    }

    /// <summary>Number of evaluations the file held when it was opened.</summary>
    public int CachedCount => cached.Count;

    /// <summary>Number of evaluations served from the file since.</summary>
    public long CacheHits { get; private set; }

    /// <summary>Why the file does not hold every evaluation, such as a full disk; null while it does. The search goes on all the
    /// same.</summary>
    public string? WriteFailure { get; private set; }

    /// <summary>Opens or creates the file of a study; no other run may open it until this one is done.</summary>
    /// <param name="path">Path of the file; its folder is created.</param>
    /// <param name="identity">What evaluations depend on: study, variant, version and build. Those of another are refused.</param>
    /// <param name="factors">Number of factors of the study.</param>
    /// <param name="phases">Number of phases of its mission.</param>
    /// <param name="refusal">The reason, when null is returned.</param>
    /// <exception cref="IOException">The disk refuses, another run holds the file, or it is no regular file.</exception>
    public static EvaluationCache? Open(string path, string identity, int factors, int phases, out string refusal)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        if (File.Exists(path))
            InputFile.Open(path).Dispose();
        var file = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 0);
        try
        {
            if (EvaluationCacheFile.Read(file, path, identity, factors, phases, out refusal) is { } cached)
                return new EvaluationCache(file, cached);
        }
        catch
        {
            file.Dispose();
            throw;
        }

        file.Dispose();
        return null;
    }

    /// <summary>The problem with cached evaluations served from the cache.</summary>
    /// <param name="problem">Evaluates what is not cached.</param>
    /// <param name="pass">Which pass of the run; evaluations of different passes are different.</param>
    public Problem Wrap(Problem problem, string pass) => problem with { Evaluate = batch => Evaluate(problem, pass, batch) };

    /// <summary>Stores a batch; cached evaluations are not written again.</summary>
    public void Store(EvaluatedBatch batch, string pass)
    {
        if (WriteFailure is not null)
            return;
        lines.Clear();
        var values = new double[batch.Problem.Factors.Count];
        for (var i = 0; i < batch.Designs.Count; i++)
        {
            batch.Designs.CopyDesign(i, batch.Problem, values);
            if (cached.ContainsKey(EvaluationCacheFile.Key(pass, values)))
                continue;
            var start = lines.Length;
            lines.Append(pass);
            foreach (var value in values)
                Append(value);
            Append(batch.Failures[i]);
            foreach (var column in batch.Objectives.Concat(batch.ConstraintValues))
                Append(batch.Failures[i] == 0 ? column[i] : 0);
            var checksum = EvaluationCacheFile.Checksum(lines.ToString(start, lines.Length - start));
            lines.Append(',').Append(checksum).Append('\n');
        }

        var whole = file.Position;
        try
        {
            file.Write(Encoding.UTF8.GetBytes(lines.ToString()));
        }
        catch (IOException problem)
        {
            // What was written of these lines goes again, so that the file can be used later.
            WriteFailure = problem.Message;
            file.SetLength(whole);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => file.Dispose();

    private void Append(double value) => lines.Append(',').Append(value.ToString("R", CultureInfo.InvariantCulture));

    private void Evaluate(Problem problem, string pass, EvaluatedBatch batch)
    {
        var values = new double[problem.Factors.Count];
        for (var i = 0; i < batch.Designs.Count; i++)
        {
            batch.Designs.CopyDesign(i, problem, values);
            if (!cached.TryGetValue(EvaluationCacheFile.Key(pass, values), out var answer)
                || answer.Length != 1 + batch.Objectives.Length + batch.ConstraintValues.Length)
            {
                problem.Evaluate(batch);
                return;
            }

            batch.Failures[i] = (ushort)answer[0];
            for (var c = 0; c < batch.Objectives.Length; c++)
                batch.Objectives[c][i] = answer[1 + c];
            for (var c = 0; c < batch.ConstraintValues.Length; c++)
                batch.ConstraintValues[c][i] = answer[1 + batch.Objectives.Length + c];
        }

        lock (cached)
            CacheHits += batch.Designs.Count;
    }
}
