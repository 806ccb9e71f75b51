using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using FrameOpt.Reports.Files;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Sections;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;
using FrameOpt.Tests.Cli;
using FrameOpt.Tests.Reports;
using Json.Schema;
using YamlDotNet.RepresentationModel;

namespace FrameOpt.Tests.StudyFile;

/// <summary>docs/study.schema.json, by which editors complete and check, says what the reader says.</summary>
public class StudySchemaTests
{
    private static readonly string path = Path.Combine(Repository.Root, "docs", "study.schema.json");
    private static readonly JsonSchema schema = JsonSchema.FromText(File.ReadAllText(path));

    public static TheoryData<string> Studies => [.. Repository.Studies];

    public static TheoryData<string, string> Slips => new()
    {
        { "diameter: 1.30 m", "diameter: 1300" },
        { "diameter: 1.30 m", "diameter: 1,30 m" },
        { "diameter: 1.30 m", "diameter: 1.30 kg" },
        { "diameter: 1.30 m", "diameter: .5 m" },
        { "turns: counter-clockwise", "truns: counter-clockwise" },
        { "turns: counter-clockwise", "turns: left" },
        { "format: 1", "format: 2" },
        { "title: One frame for one engine", "" },
        { "mass: 78 kg, ", "" },
        { "mass: 78 kg", "mass: 78 kg, volume: 6 l" },
        { "body: true", "body: 1" },
        { "hang_line:", "arms: movin\n  hang_line:" },
        { "carried: 0.8", "carried: 0.8, settled: 1" },
        { "speed_factor: 0.17 s/m", "speed_factor: 0.17" },
        { "yaw_leverage: { speed_factor: 0.17 s/m, twist_share: 0.5 }", "yaw_damping: 0.07" },
        { "yaw_leverage: {", "sideslip: { roll: -0.67, yaw: 0.32 }\n  yaw_leverage: {" },
        { "reduction: 2.9", "reduction: 2.9 m" },
        { "efficiency: 0.96", "efficiency: high" },
        { "[1, 13.6 m/s, 5.0]", "[1, 13.6 m/s]" },
        { "power: climb 1.8 m/s", "power: climb" },
        { "power: climb 1.8 m/s", "power: levle" },
        { "power: engine off", "power: off" },
        { "minimise: residual_rms", "minimise: residual_rsm" },
        { "minimise: residual_rms", "minimise: residual" },
        { "minimise: residual_rms", "minimise: median of residual_rms" },
        { "maximise: weight_shift_authority[cruise]", "maximise: weight_shift_authority" },
        { "at_most: 0.6 }", "}" },
        { "limits:", "bounds:" },
        { "search: { method: exhaustive }", "search: { method: evolution }" },
        { "riser_coupling: { length: 330 mm, at_spacing: 440 mm }", "riser_coupling: { length: 330 mm }" },
        { "baseline:", "variants: { heavy: { machine: { masses: { pilot: { mass: 100 } } } } }\nbaseline:" },
        { "baseline:", "variants: { heavy: { machine: { mases: { pilot: { mass: 100 kg } } } } }\nbaseline:" },
        { "baseline:", "variants: { heavy: { format: 1 } }\nbaseline:" },
    };

    [Fact]
    public void Shipped_schema_is_made_from_the_keys_and_the_document()
    {
        var document = File.ReadAllText(Path.Combine(Repository.Root, "docs", "study-file.md")).ReplaceLineEndings("\n");
        var words = Regex.Matches(document, @"^\| `(?<key>[^`]+)` \|(?<rest>.*)\|$", RegexOptions.Multiline).ToDictionary(
            row => row.Groups["key"].Value,
            row => row.Groups["rest"].Value.Split('|').Select(cell => cell.Trim()).ToArray() is var cells
                ? new StudySchema.Words(cells[0], cells[1], cells[2]) : null!);
        var text = new StudySchema(words).Text();
        if (Environment.GetEnvironmentVariable("FRAMEOPT_WRITE_SCHEMA") == "1")
            File.WriteAllText(path, text);
        Assert.True(
            text == File.ReadAllText(path).ReplaceLineEndings("\n"),
            "docs/study.schema.json is not what the keys and the document make: "
                + "run this test with FRAMEOPT_WRITE_SCHEMA=1 to rewrite it, and look at the change");
    }

    [Theory]
    [MemberData(nameof(Studies))]
    public void Shipped_study_keeps_the_schema_and_names_it_in_its_first_line(string name)
    {
        var text = File.ReadAllText(Repository.Study(name));
        Assert.Equal("", Complaints(text));
        Assert.StartsWith("# yaml-language-server: $schema=../../docs/study.schema.json\n", text.ReplaceLineEndings("\n"));
    }

    [Theory]
    [InlineData("custom-match")]
    [InlineData("product-line")]
    [InlineData("rationale")]
    public void Template_keeps_the_schema_that_is_written_beside_it(string template)
    {
        using var folder = new TemporaryFolder();
        new TestTerminal().Run("new", template, "--out", folder["study.yaml"]);
        var text = File.ReadAllText(folder["study.yaml"]);
        Assert.Equal("", Complaints(text));
        Assert.StartsWith("# yaml-language-server: $schema=study.schema.json\n", text.ReplaceLineEndings("\n"));
        Assert.Equal(File.ReadAllText(path), File.ReadAllText(folder["study.schema.json"]));
    }

    [Fact]
    public void Worked_study_keeps_the_schema() => Assert.Equal("", Complaints(Quoted(WorkedStudyText.Text)));

    [Theory]
    [MemberData(nameof(Slips))]
    public void Slip_is_seen_by_the_schema_and_by_the_reader(string piece, string slip)
    {
        var text = WorkedStudyText.With(piece, slip);
        Assert.NotEqual("", Complaints(Quoted(text)));
        Assert.NotEmpty(WorkedStudyText.Read(text).Diagnostics);
    }

    [Fact]
    public void Example_of_every_key_keeps_the_schema_of_its_key()
    {
        foreach (var section in StudyKeys.All.Where(section => section.Path.Length > 0 && !section.Path.Contains("factors")
            && !section.Path.Contains("limits")
            && !section.Path.StartsWith("line.customers", StringComparison.Ordinal)))
        {
            var keys = section.Keys.Where(key => !key.Value.Contains("...")).ToList();
            foreach (var key in keys)
                Assert.True(Accepts(section.Path, key), $"{section.Path}: {key.Example}");
        }
    }

    /// <summary>True when a schema of the section finds nothing against the key's own example.</summary>
    private static bool Accepts(string section, Key key)
    {
        var node = JsonNode.Parse(File.ReadAllText(path))!;
        var at = node;
        foreach (var step in section.Replace("[]", ".[]").Split('.'))
            at = Group(step is "[]" ? at["items"]! : step is "<phase>" ? at["additionalProperties"]!
                : at["properties"]![step is "<source>" ? "seat_right" : step]!);
        var alone = new JsonObject
        {
            ["$defs"] = node["$defs"]!.DeepClone(),
            ["properties"] = at["properties"]!.DeepClone(),
            ["additionalProperties"] = false
        };
        return JsonSchema.FromText(alone.ToJsonString()).Evaluate(Json(Quoted($"{key.Example}"))).IsValid;
    }

    /// <summary>The group of keys where a number may stand in its place.</summary>
    private static JsonNode Group(JsonNode schema) =>
        schema["anyOf"] is JsonArray choices && choices.FirstOrDefault(choice => choice!["properties"] is not null) is { } group ? group
            : schema;

    private static string Complaints(string yaml)
    {
        var result = schema.Evaluate(Json(yaml), new EvaluationOptions { OutputFormat = OutputFormat.List });
        return result.IsValid
            ? ""
            : string.Join("\n", result.Details!.Where(detail => detail.Errors is not null)
                .SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation}: {error.Value}"))) + "invalid";
    }

    /// <summary>What other programs need in { }, see docs/study-file.md.</summary>
    private static string Quoted(string yaml) => Regex.Replace(yaml, """(?<!["\w])([a-z_]+\[[a-z]+\])(?!")""", "\"$1\"");

    private static JsonElement Json(string yaml)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(yaml));
        return JsonSerializer.SerializeToElement(Node(stream.Documents[0].RootNode));
    }

    private static JsonNode? Node(YamlNode node) => node switch
    {
        YamlMappingNode map => new JsonObject(map.Children.Select(pair =>
            KeyValuePair.Create(((YamlScalarNode)pair.Key).Value!, Node(pair.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(Node)]),
        YamlScalarNode scalar => Scalar(scalar),
        _ => throw new InvalidOperationException(),
    };

    /// <summary>The core schema of YAML 1.2, chapter 10.3.2: plain numbers, true, false and null.</summary>
    private static JsonNode? Scalar(YamlScalarNode scalar)
    {
        var text = scalar.Value!;
        if (scalar.Style != YamlDotNet.Core.ScalarStyle.Plain)
            return text;
        if (Regex.IsMatch(text, @"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?$"))
            return double.Parse(text);
        return text switch { "true" => true, "false" => false, "" or "null" or "~" => null, _ => text };
    }
}
