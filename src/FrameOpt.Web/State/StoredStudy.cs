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
public sealed record StoredStudy(
    string Name, string Text, Dictionary<string, string> Beside, string Variant, double[]? Hand, double[][] Kept)
{
    /// <summary>A design as numbers.</summary>
    public static double[] Numbers(FrameGeometry design) => [.. FactorCatalogue.All.Select(input => design[input])];

    /// <summary>A design from its numbers; null where there are too few or too many.</summary>
    public static FrameGeometry? Geometry(double[]? numbers) => numbers?.Length != FactorCatalogue.All.Count ? null
        : FactorCatalogue.All.Aggregate(default(FrameGeometry), (geometry, input) => geometry.With(input, numbers[input.Index]));
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
