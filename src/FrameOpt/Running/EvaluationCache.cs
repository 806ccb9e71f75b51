using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using FrameOpt.Search;

namespace FrameOpt.Running;

/// <summary>Evaluations cached in a text file during a search, so that the same run continues where it stopped or was killed.</summary>
/// <remarks>Every line is one design: the pass, its values in m and rad, its failure code (0 for none), its objectives oriented so that
/// smaller is better, its limits' values; shortest decimals that read back to the same bits. An incomplete last line is dropped.</remarks>
public sealed class EvaluationCache : IDisposable
{
    private const string Mark = "# FrameOpt evaluations, format 1";

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

    /// <summary>Opens or creates the file of a study.</summary>
    /// <param name="path">Path of the file; its folder is created.</param>
    /// <param name="identity">What the evaluations depend on: study, variant, version. Evaluations of another are refused.</param>
    /// <param name="factors">Number of factors of the study.</param>
    /// <param name="refusal">The reason, when null is returned.</param>
    /// <exception cref="IOException">The disk refuses, or another run holds the file.</exception>
    public static EvaluationCache? Open(string path, string identity, int factors, out string refusal)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        var file = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.Read);
        var header = $"{Mark}\n# {identity}\n";
        var text = new StreamReader(file, Encoding.UTF8, leaveOpen: true).ReadToEnd();
        refusal = "";
        if (text.Length > 0 && !text.StartsWith(header, StringComparison.Ordinal) && !header.StartsWith(text, StringComparison.Ordinal))
        {
            file.Dispose();
            refusal = text.StartsWith(Mark, StringComparison.Ordinal)
                ? $"{path} holds evaluations of another study, variant or version; name another file, or delete it"
                : $"{path} is not a file of evaluations and is left alone; name another file";
            return null;
        }

        var (cached, whole) = Read(text, header, factors);
        file.SetLength(Encoding.UTF8.GetByteCount(text.AsSpan(0, whole)));
        file.Seek(0, SeekOrigin.End);
        var cache = new EvaluationCache(file, cached);
        if (whole == 0)
            file.Write(Encoding.UTF8.GetBytes(header));
        return cache;
    }

    /// <summary>The problem with cached evaluations served from the cache.</summary>
    /// <param name="problem">Evaluates what is not cached.</param>
    /// <param name="pass">Which pass of the run; evaluations of different passes are different.</param>
    public Problem Wrap(Problem problem, string pass) => problem with { Evaluate = batch => Evaluate(problem, pass, batch) };

    /// <summary>Stores a batch; cached evaluations are not written again.</summary>
    public void Store(EvaluatedBatch batch, string pass)
    {
        lines.Clear();
        var values = new double[batch.Problem.Factors.Count];
        for (var i = 0; i < batch.Designs.Count; i++)
        {
            batch.Designs.CopyDesign(i, batch.Problem, values);
            if (cached.ContainsKey(Key(pass, values)))
                continue;
            lines.Append(pass);
            foreach (var value in values)
                Append(value);
            Append(batch.Failures[i]);
            foreach (var column in batch.Objectives.Concat(batch.ConstraintValues))
                Append(batch.Failures[i] == 0 ? column[i] : 0);
            lines.Append('\n');
        }

        file.Write(Encoding.UTF8.GetBytes(lines.ToString()));
        file.Flush();
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
            if (!cached.TryGetValue(Key(pass, values), out var answer)
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

    private static string Key(string pass, ReadOnlySpan<double> values) => $"{pass},{Convert.ToHexString(MemoryMarshal.AsBytes(values))}";

    private static (Dictionary<string, double[]> CachedCount, int Whole) Read(string text, string header, int factors)
    {
        var cached = new Dictionary<string, double[]>();
        if (text.Length < header.Length)
            return (cached, 0);
        var whole = header.Length;
        for (int end; (end = text.IndexOf('\n', whole)) >= 0; whole = end + 1)
        {
            var fields = text[whole..end].Split(',');
            var numbers = new double[fields.Length - 1];
            for (var i = 0; i < numbers.Length; i++)
            {
                if (!double.TryParse(fields[i + 1], NumberStyles.Float, CultureInfo.InvariantCulture, out numbers[i]))
                    return (cached, whole);
            }

            if (numbers.Length <= factors)
                return (cached, whole);
            cached[Key(fields[0], numbers.AsSpan(0, factors))] = numbers[factors..];
        }

        return (cached, whole);
    }
}
