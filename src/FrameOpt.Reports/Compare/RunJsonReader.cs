using System.Text.Json;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Files;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.Reports.Compare;

/// <summary>run.json read back: the run and the figures of the designs asked for.</summary>
internal sealed class RunJsonReader : IDisposable
{
    /// <summary>Larger files are refused before they are read.</summary>
    public const long MaxBytes = 50_000_000;

    private readonly JsonDocument document;
    /// <summary>Largest number of keys and values of a study in the file, and of columns of the front.</summary>
    private const int MaxParts = 20_000;

    private readonly Dictionary<string, int> columns = new(StringComparer.Ordinal);
    private readonly IReadOnlyList<(string Name, bool IsSettled)> phases;
    private readonly RunJsonElement front;

    private RunJsonReader(JsonDocument document, string folder)
    {
        this.document = document;
        var root = new RunJsonElement(document.RootElement, "");
        front = root["front"];
        if (root["study"].Exceeds(MaxParts) || front["columns"].Exceeds(MaxParts) || root["warnings"].Exceeds(MaxParts))
            throw new InvalidRunFileException("", $"its study, columns or warnings have more than {MaxParts} parts; no run writes that");
        phases = [.. root["study"]["mission"].Items.Select(phase =>
            (phase["name"].Text, !phase.Has("settled") || phase["settled"].Boolean))];
        foreach (var (index, column) in front["columns"].Items.Index())
            columns.TryAdd(column["name"].Text, index);
        Run = Read(root, folder, front["rows"].Element.ValueKind == JsonValueKind.Array ? front["rows"].Element.GetArrayLength() : 0);
    }

    /// <summary>The run.</summary>
    public ComparedRun Run { get; }

    /// <summary>Reads the run of a folder.</summary>
    /// <param name="folder">As the user wrote it.</param>
    /// <param name="version">Of this program: the figures of another version may come from other formulas.</param>
    /// <param name="error">Why it cannot be read, in words.</param>
    /// <returns>The run, or null with an error.</returns>
    public static RunJsonReader? Open(string folder, string version, out string error)
    {
        var path = Path.Combine(folder, RunFolder.RunJsonName);
        JsonDocument? document = null;
        try
        {
            error = FileProblem(folder, path);
            if (error.Length > 0)
                return null;
            using (var stream = InputFile.Open(path))
                document = JsonDocument.Parse(stream);
            error = VersionProblem(new RunJsonElement(document.RootElement, ""), path, version);
            if (error.Length == 0)
                return new RunJsonReader(document, folder);
        }
        catch (Exception problem) when (problem is JsonException or InvalidRunFileException)
        {
            error = $"{path} is damaged {problem.Message.ReplaceLineEndings(" ").TrimEnd('.')}. Run the study again.";
        }
        catch (InvalidOperationException)
        {
            // System.Text.Json throws this for half a surrogate pair in a text.
            error = $"{path} is damaged: it contains text that is not valid Unicode. Run the study again.";
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            error = $"{path} cannot be read: {problem.Message}";
        }

        document?.Dispose();
        return null;
    }

    /// <summary>Reads what <see cref="RunJson"/> just wrote.</summary>
    /// <param name="json">All of it.</param>
    /// <param name="folder">What stands for the folder in the comparison.</param>
    public static RunJsonReader Of(byte[] json, string folder) => new(JsonDocument.Parse(json), folder);

    /// <summary>One design of the front.</summary>
    /// <param name="position">In the order of the ranking, from 1.</param>
    /// <param name="letter">Its letter in the comparison.</param>
    /// <param name="error">Why there is none, in words.</param>
    public ComparedColumn? Column(int position, string letter, out string error)
    {
        var path = Path.Combine(Run.Folder, RunFolder.RunJsonName);
        error = Run.FrontCount == 0 ? $"{Run.Folder}: this run found no design that meets every limit, so there is none to compare."
            : position < 1 || position > Run.FrontCount
                ? $"{Run.Folder}: this run has {NumberFormat.Count(Run.FrontCount)} ranked designs, numbered from 1; "
                    + $"there is no design {position}."
            : "";
        if (error.Length > 0)
            return null;
        try
        {
            if (phases.Any(phase => FrontTable.PhaseQuantities.Any(quantity => !columns.ContainsKey($"{quantity}[{phase.Name}]"))))
            {
                error = $"{path} does not contain the phases of its ranked designs because an older build of FrameOpt wrote it. Run the "
                    + $"study again.";
                return null;
            }

            return Column(front["rows"].ItemAt(position - 1).Items, position, letter);
        }
        catch (InvalidRunFileException problem)
        {
            error = $"{path} is damaged {problem.Message}. Run the study again.";
            return null;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => document.Dispose();

    private static string FileProblem(string folder, string path)
    {
        if (string.IsNullOrWhiteSpace(folder))
            return "The name of a folder is empty; give the results folder of a run.";
        if (!Directory.Exists(folder))
            return File.Exists(folder) ? $"{folder} is a file; give the results folder of a run." : $"{folder}: there is no such folder.";
        if (!File.Exists(path))
            return $"{folder} contains no {RunFolder.RunJsonName}, so it is not the results folder of a run.";
        return new FileInfo(path).Length > MaxBytes ? $"{path} is larger than {MaxBytes / 1_000_000} MB and was not read." : "";
    }

    private static string VersionProblem(RunJsonElement root, string path, string version)
    {
        if (!root.Has("tool") || root["tool"].Text != "FrameOpt")
            return $"{path} was not written by FrameOpt.";
        var other = root["version"].Text;
        return other == version ? ""
            : $"{path} was written by FrameOpt {other}, and this is {version}: results may differ between versions. Run the study again "
                + $"with this version.";
    }

    private static ComparedRun Read(RunJsonElement root, string folder, int designs)
    {
        var study = root["study"];
        return new ComparedRun(
            RunJsonElement.SingleLine(folder),
            root["study_file"].Text,
            root["study_sha256"].Text,
            root["version"].Text,
            study["title"].Text,
            study["variant"].Text,
            root["stop_reason"].Text,
            root["complete"].Boolean,
            (long)root["counts"]["evaluated"].Number,
            designs,
            MachineJsonReader.Of(study["machine"]),
            FactorsJsonReader.Of(study["factors"]),
            StudyTree.Of(study),
            [.. root["warnings"].Items.Select(warning => warning.Text)]);
    }

    private ComparedColumn Column(IReadOnlyList<RunJsonElement> row, int position, string letter)
    {
        double Value(string name, bool isNeeded = true)
        {
            return columns.TryGetValue(name, out var index) && index < row.Count ? isNeeded ? row[index].Number : row[index].NumberOrNaN
                : throw new InvalidRunFileException(front.Path, $"{name} is missing");
        }

        // Null stands for a lean or an effort without bound.
        double OfPhase(PhaseQuantity quantity, string phase) =>
            Value($"{quantity}[{phase}]", isNeeded: quantity.LargestRanked is null) is var value && double.IsNaN(value)
                ? double.PositiveInfinity : value;

        var geometry = FactorsJsonReader.Geometry(Run.Machine, Run.Factors, factor => Value(factor.Name));
        return new ComparedColumn(
            letter,
            Run,
            position,
            (int)Value("rank"),
            geometry,
            [.. phases.Select(phase => new ComparedPhase(phase.Name, phase.IsSettled,
                [.. FrontTable.PhaseQuantities.Select(quantity => OfPhase(quantity, phase.Name))]))],
            [.. ResponseCatalogue.OfMissions.Select(response => Value(columns.ContainsKey(response.Name) ? response.Name
                : $"|{response.Name}|", isNeeded: false))]);
    }
}
