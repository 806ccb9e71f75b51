using System.Globalization;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;
using FrameOpt.Model;
using FrameOpt.Search;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.Running;

/// <summary>Evaluations cached in a text file during a search, so that the same run continues where it stopped or was killed.</summary>
/// <remarks>Every line is one design: the pass, its values in m and rad, its failure code (0 for none), its objectives oriented so that
/// smaller is better, its limits' values, and a checksum of all that; shortest decimals that read back to the same bits. A last line that
/// was not written to its end is dropped; any other line that does not agree with its checksum makes the file unusable.</remarks>
public sealed class EvaluationCache : IDisposable
{
    private const string Mark = "# FrameOpt evaluations, format 2";
    private const int ChecksumBytes = 4;

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
        var file = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        try
        {
            if (Read(file, path, $"{Mark}\n# {identity}\n", factors, phases, out refusal) is { } cached)
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
        lines.Clear();
        var values = new double[batch.Problem.Factors.Count];
        for (var i = 0; i < batch.Designs.Count; i++)
        {
            batch.Designs.CopyDesign(i, batch.Problem, values);
            if (cached.ContainsKey(Key(pass, values)))
                continue;
            var start = lines.Length;
            lines.Append(pass);
            foreach (var value in values)
                Append(value);
            Append(batch.Failures[i]);
            foreach (var column in batch.Objectives.Concat(batch.ConstraintValues))
                Append(batch.Failures[i] == 0 ? column[i] : 0);
            var checksum = Checksum(lines.ToString(start, lines.Length - start));
            lines.Append(',').Append(checksum).Append('\n');
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

    private static string Checksum(string line) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(line)).AsSpan(0, ChecksumBytes));

    /// <summary>Reads what the file holds, line by line, and leaves it ready for more; null with a refusal.</summary>
    private static Dictionary<string, double[]>? Read(FileStream file, string path, string header, int factors, int phases,
        out string refusal)
    {
        refusal = "";
        var cached = new Dictionary<string, double[]>();
        var expected = Encoding.UTF8.GetBytes(header);
        var found = new byte[Math.Min(expected.Length, file.Length)];
        file.ReadExactly(found);
        if (!expected.AsSpan().StartsWith(found))
        {
            refusal = found.AsSpan().StartsWith(Encoding.UTF8.GetBytes(Mark[..^1]))
                ? $"{path} holds evaluations of another study, variant, version or build of FrameOpt; name another file, or delete it"
                : $"{path} is not a file of evaluations and is left alone; name another file";
            return null;
        }

        var whole = (long)found.Length;
        if (found.Length < expected.Length)
        {
            file.SetLength(0);
            file.Write(expected);
            return cached;
        }

        using (var reader = new StreamReader(file, Encoding.UTF8, leaveOpen: true))
        {
            for (var number = 3; reader.ReadLine() is { } line; number++)
            {
                var bytes = Encoding.UTF8.GetByteCount(line) + 1;
                if (!TryRead(line, factors, phases, cached) || whole + bytes > file.Length)
                {
                    if (whole + bytes < file.Length)
                    {
                        refusal = $"{path}, line {number}: it was changed after FrameOpt wrote it, so no line of the file is trusted; name "
                            + "another file, or delete it";
                        return null;
                    }

                    break;
                }

                whole += bytes;
            }
        }

        file.SetLength(whole);
        file.Seek(0, SeekOrigin.End);
        return cached;
    }

    /// <summary>Takes one line; false when it does not agree with its checksum or is no evaluation.</summary>
    private static bool TryRead(string line, int factors, int phases, Dictionary<string, double[]> cached)
    {
        var end = line.LastIndexOf(',');
        if (end < 0 || line[(end + 1)..] != Checksum(line[..end]))
            return false;
        var fields = line[..end].Split(',');
        var numbers = new double[fields.Length - 1];
        for (var i = 0; i < numbers.Length; i++)
        {
            var isNumber = double.TryParse(fields[i + 1], NumberStyles.Float, CultureInfo.InvariantCulture, out numbers[i]);
            if (!isNumber || double.IsNaN(numbers[i]))
                return false;
        }

        if (numbers.Length <= factors || !FlightFailure.IsCode(numbers[factors], phases))
            return false;
        cached[Key(fields[0], numbers.AsSpan(0, factors))] = numbers[factors..];
        return true;
    }
}
