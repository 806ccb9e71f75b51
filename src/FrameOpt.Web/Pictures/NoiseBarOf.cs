using System.Text.Json;

namespace FrameOpt.Web.Pictures;

/// <summary>What one uncertain number does to the residual torque of a phase, alone.</summary>
/// <param name="Name">Of the number.</param>
/// <param name="Low">Residual torque at its 10 % point, N·m.</param>
/// <param name="High">Residual torque at its 90 % point, N·m.</param>
public sealed record NoiseBarOf(string Name, double Low, double High)
{
    private const int Most = 10;

    /// <summary>The bars of a run, the longest first; none where nothing is uncertain.</summary>
    /// <param name="runJson">The run's file run.json.</param>
    /// <param name="phase">Name of the phase.</param>
    public static IReadOnlyList<NoiseBarOf> Read(string runJson, string phase)
    {
        using var json = JsonDocument.Parse(runJson);
        if (!json.RootElement.TryGetProperty("uncertainty", out var all) || all.ValueKind != JsonValueKind.Object)
            return [];
        var titles = all.GetProperty("sources").EnumerateArray()
            .ToDictionary(one => one.GetProperty("name").GetString()!, one => one.GetProperty("title").GetString()!);
        double? Residual(JsonElement bar, string end) => bar.GetProperty(end).GetProperty("residual").TryGetProperty(phase, out var value)
            ? value.GetProperty("value").GetDouble() : null;
        return
        [
            .. all.GetProperty("bars").EnumerateArray()
                .Select(bar => (Name: titles[bar.GetProperty("source").GetString()!], Low: Residual(bar, "low"), High: Residual(bar, "high")))
                .Where(bar => bar.Low is not null && bar.High is not null)
                .Select(bar => new NoiseBarOf(bar.Name, bar.Low!.Value, bar.High!.Value))
                .OrderByDescending(bar => Math.Abs(bar.High - bar.Low)).Take(Most),
        ];
    }
}
