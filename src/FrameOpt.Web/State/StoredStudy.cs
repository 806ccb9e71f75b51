using System.Text.Json;
using System.Text.Json.Serialization;
using FrameOpt.Model;

namespace FrameOpt.Web.State;

/// <summary>A study as the browser keeps it between visits.</summary>
/// <param name="Name">Of its file.</param>
/// <param name="Text">Of its file.</param>
/// <param name="Beside">Files that it reads, by name.</param>
/// <param name="Variant">The variant looked at; empty for none.</param>
/// <param name="Hand">The design looked at, each geometry input in m or rad.</param>
/// <param name="Kept">Designs kept to compare with.</param>
/// <param name="Measured">What was measured; null for nothing.</param>
public sealed record StoredStudy(
    string Name, string Text, Dictionary<string, string> Beside, string Variant, double[]? Hand, double[][] Kept,
    StoredMeasured? Measured = null)
{
    /// <summary>How measured runs are analysed; null as long as nothing was chosen.</summary>
    public StoredRuns? Runs { get; init; }

    /// <summary>With some files beside it added or replaced.</summary>
    public StoredStudy With(IEnumerable<(string Name, string Text)> files)
    {
        var beside = new Dictionary<string, string>(Beside);
        foreach (var (name, text) in files)
            beside[name] = text;
        return this with { Beside = beside };
    }

    /// <summary>A design as numbers.</summary>
    public static double[] Numbers(FrameGeometry design) => [.. FactorCatalogue.All.Select(input => design[input])];

    /// <summary>A design from its numbers; null where there are too few or too many.</summary>
    public static FrameGeometry? Geometry(double[]? numbers) => numbers?.Length != FactorCatalogue.All.Count ? null
        : FactorCatalogue.All.Aggregate(default(FrameGeometry), (geometry, input) => geometry.With(input, numbers[input.Index]));
}

/// <summary>What was measured on a frame, as the browser keeps it; the readings of the flight card stand in a file beside the
/// study.</summary>
/// <param name="Left">What the left scale read, as typed.</param>
/// <param name="Right">What the right scale read.</param>
/// <param name="IsBaseline">True when the study's baseline hung, false for the design looked at.</param>
/// <param name="Built">The frame that the flight card is for, each geometry input in m or rad; null where there is none.</param>
/// <param name="Done">The runs of the flight card that are ticked.</param>
public sealed record StoredMeasured(string Left, string Right, bool IsBaseline, double[]? Built, string[] Done)
{
    /// <summary>The file beside the study that the flight card is kept in, as the command form writes it.</summary>
    public const string FormName = "measurements.csv";

    /// <summary>Nothing yet.</summary>
    public static StoredMeasured None { get; } = new("", "", false, null, []);
}

/// <summary>How measured runs are analysed, as the browser keeps it; the runs stand in a file beside the study.</summary>
/// <param name="Terms">To fit; empty for the most that the runs can estimate.</param>
/// <param name="IsSelected">True to keep only the terms that earn their place.</param>
/// <param name="Goals">As typed, one a line.</param>
public sealed record StoredRuns(string Terms, bool IsSelected, string Goals)
{
    /// <summary>The file beside the study that the runs are kept in.</summary>
    public const string FileName = "measured-runs.csv";

    /// <summary>Nothing chosen.</summary>
    public static StoredRuns None { get; } = new("", false, "");
}

/// <summary>Writes and reads what is kept, without reflection.</summary>
[JsonSerializable(typeof(StoredStudy))]
[JsonSerializable(typeof(List<string>))]
public sealed partial class StoredJson : JsonSerializerContext
{
    /// <summary>What was kept; null when it cannot be read.</summary>
    public static StoredStudy? Study(string? text)
    {
        try
        {
            return text is null ? null : JsonSerializer.Deserialize(text, Default.StoredStudy);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>The numbers of the studies that are kept.</summary>
    public static List<string> Numbers(string? text)
    {
        try
        {
            return text is null ? [] : JsonSerializer.Deserialize(text, Default.ListString) ?? [];
        }
        catch (JsonException)
        {
            return [];
        }
    }
}
