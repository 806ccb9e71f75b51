using System.Globalization;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;
using FrameOpt.Model;

namespace FrameOpt.Running;

/// <summary>The lines of a file of evaluations, and how they are read back.</summary>
internal static class EvaluationCacheFile
{
    private const string Mark = "# FrameOpt evaluations, format 2";
    private const int ChecksumBytes = 4;

    /// <summary>By what an evaluation is found: the pass, and the values bit by bit.</summary>
    public static string Key(string pass, ReadOnlySpan<double> values) => $"{pass},{Convert.ToHexString(MemoryMarshal.AsBytes(values))}";

    /// <summary>Of a line without its end.</summary>
    public static string Checksum(string line) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(line)).AsSpan(0, ChecksumBytes));

    /// <summary>Reads what the file holds, line by line, and leaves it ready for more; null with a refusal.</summary>
    public static Dictionary<string, double[]>? Read(
        FileStream file, string path, string identity, int factors, int phases, out string refusal)
    {
        refusal = "";
        var cached = new Dictionary<string, double[]>();
        var expected = Encoding.UTF8.GetBytes($"{Mark}\n# {identity}\n");
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
                if (whole + bytes > file.Length || !TryRead(line, factors, phases, cached))
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
