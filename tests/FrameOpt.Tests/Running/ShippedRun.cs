using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json;
using FrameOpt.Cli;
using FrameOpt.Tests.Cli;

namespace FrameOpt.Tests.Running;

/// <summary>A shipped study run from the command line, as its files tell it. Each is run once for all tests.</summary>
public sealed class ShippedRun
{
    private static readonly ConcurrentDictionary<(string Study, string Variant), Lazy<ShippedRun>> runs = new();

    private ShippedRun(string study, string variant)
    {
        using var folder = new TemporaryFolder();
        string[] ofVariant = variant.Length == 0 ? [] : ["--variant", variant];
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run(["run", Repository.Study(study), .. ofVariant, "--out", folder["a"]]));
        using var json = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(folder["a"], "run.json")));
        Json = json.RootElement.Clone();
        Output = terminal.Output;
        var lines = File.ReadAllLines(Path.Combine(folder["a"], "designs.csv")).Select(line => line.Split(',')).ToList();
        Header = lines[0];
        Front = [.. lines.Skip(1).Select(line => Array.ConvertAll(line, Number))];
        var plan = Path.Combine(folder["a"], "plan.csv");
        PlanRuns = File.Exists(plan) ? File.ReadAllLines(plan).Length - 1 : 0;
    }

    /// <summary>All of run.json.</summary>
    public JsonElement Json { get; }

    /// <summary>What the terminal showed.</summary>
    public string Output { get; }

    /// <summary>Columns of designs.csv.</summary>
    public IReadOnlyList<string> Header { get; }

    /// <summary>Rows of designs.csv; a blank cell is NaN.</summary>
    public IReadOnlyList<double[]> Front { get; }

    /// <summary>Rows of plan.csv, none without a plan.</summary>
    public int PlanRuns { get; }

    public JsonElement Study => Json.GetProperty("study");

    /// <summary>The best compromise.</summary>
    public JsonElement Chosen => Json.GetProperty("chosen");

    public IReadOnlyList<JsonElement> Mission => [.. Study.GetProperty("mission").EnumerateArray()];

    public static ShippedRun Of(string study, string variant = "") =>
        runs.GetOrAdd((study, variant), key => new Lazy<ShippedRun>(() => new ShippedRun(key.Study, key.Variant))).Value;

    /// <summary>A value of run.json that stands with its unit.</summary>
    public static double Value(JsonElement parent, string name) => parent.GetProperty(name).GetProperty("value").GetDouble();

    /// <summary>A factor of the chosen design, in the unit of the study.</summary>
    public double Factor(string name) => Value(Chosen.GetProperty("design"), name);

    /// <summary>A quantity of the chosen design in a phase, in the unit of run.json.</summary>
    public double InPhase(JsonElement phase, string quantity) =>
        Value(Chosen.GetProperty("phases").GetProperty(phase.GetProperty("name").GetString()!), quantity);

    /// <summary>The column of designs.csv that holds a response, its unit in brackets left out.</summary>
    public int Column(string name) =>
        Enumerable.Range(0, Header.Count).Single(c => Header[c] == name || Header[c].StartsWith(name + " [", StringComparison.Ordinal));

    private static double Number(string cell) => cell.Length == 0 ? double.NaN : double.Parse(cell, CultureInfo.InvariantCulture);
}
