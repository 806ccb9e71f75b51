using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using FrameOpt.Model.Mission;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.Tests.StudyFile;

/// <summary>What <see cref="StudySchema"/> is put together from.</summary>
internal static class SchemaPieces
{
    public const string Number = @"[+-]?[0-9]+(\.[0-9]+)?([eE][+-]?[0-9]+)?";

    /// <summary>What must stand together or must not, where the list of keys alone does not say it.</summary>
    public static readonly IReadOnlyDictionary<string, string> Together = new Dictionary<string, string>
    {
        ["machine.masses[]"] =
            """
            { "oneOf": [
                { "required": ["mass"], "not": { "anyOf": [{ "required": ["volume"] }, { "required": ["density"] }] } },
                { "required": ["volume", "density"], "not": { "required": ["mass"] } }
            ] }
            """,
        ["machine.propeller"] = """{ "oneOf": [{ "required": ["coefficients"] }, { "required": ["bench"] }] }""",
        ["machine.propeller.bench"] =
            """
            {
                "oneOf": [{ "required": ["torque"] }, { "required": ["power"] }],
                "anyOf": [{ "required": ["pitch"] }, { "required": ["zero_thrust_advance_ratio"] }]
            }
            """,
        ["wing"] = """{ "not": { "required": ["yaw_leverage", "sideslip"] } }""",
        ["mission.<phase>"] = """{ "not": { "required": ["fraction", "airspeed"] } }""",
        ["factors"] =
            """
            { "oneOf": [
                { "required": ["hang_point_spacing", "lateral_offset"], "not": { "required": ["holes"] } },
                { "required": ["holes"], "not": { "anyOf": [{ "required": ["hang_point_spacing"] }, { "required": ["lateral_offset"] }] } }
            ] }
            """,
        ["factors.holes"] =
            """{ "oneOf": [{ "required": ["left", "right"] }, { "required": ["values"] }, { "required": ["first", "pitch", "count"] }] }""",
        ["factors.holes.<side>"] = """{ "oneOf": [{ "required": ["values"] }, { "required": ["first", "pitch", "count"] }] }""",
        ["factors.<factor>"] = """{ "oneOf": [{ "required": ["from", "to"] }, { "required": ["values"] }] }""",
        ["noise.<source>"] =
            """
            {
                "oneOf": [{ "required": ["normal"] }, { "required": ["uniform"] }, { "required": ["triangle"] }, { "required": ["table"] }],
                "dependentRequired": { "from": ["normal"], "to": ["normal"] }
            }
            """,
        ["objectives[]"] = """{ "oneOf": [{ "required": ["minimise"] }, { "required": ["maximise"] }] }""",
        ["line.customers[]"] = """{ "not": { "required": ["share", "count"] } }""",
        ["limits[]"] = """{ "anyOf": [{ "required": ["at_least"] }, { "required": ["at_most"] }] }""",
    };

    public static JsonObject Deviation() => AnyOf(Reference("length"), Reference("angle"), Reference("share"),
        Reference(Name(Dimension.TemperatureDifference)), Reference("number"));

    public static JsonObject LengthOrAngle() => AnyOf(Reference("length"), Reference("angle"));

    public static JsonObject Power() => AnyOf(
        OrWithReason(OneOf("level", "full throttle", "engine off")),
        OrWithReason(Pattern($"^climb +{Number} *({Spellings(Dimension.Speed)})$"), isFigure: true),
        Reference(Name(Dimension.Revolutions)));

    public static JsonObject OfResponse() => new()
    {
        ["type"] = "string",
        ["description"] =
            "A response of the mission, or a quantity of a phase with the phase's name in [ ]. In { } write the latter in quotes.",
        ["anyOf"] = new JsonArray(
            OneOf([.. ResponseCatalogue.OfMissions.Select(entry => entry.Name)]),
            new JsonObject
            {
                ["pattern"] = $@"^({string.Join('|', ResponseCatalogue.OfPhases.Select(entry => entry.Name))})\[[^\[\]]+\]$",
            }),
    };

    /// <summary>A response, or one over the cases of the noise.</summary>
    public static JsonObject AnyResponse()
    {
        const string single = @"[a-z_]+(\[[^\[\]]+\])?";
        return AnyOf(
            new JsonObject { ["$ref"] = "#/$defs/response" },
            Pattern($@"^(mean|standard deviation|worst|percentile +{Number}|mean of worst +{Number} *%) of {single}$"),
            Pattern($"^share of cases with ({single} (at least|at most) +{Number}.*|every limit met)$"));
    }

    public static JsonObject OfDimension(Dimension dimension)
    {
        var text = Pattern($"^{Number} *({Spellings(dimension)})$");
        var number = new JsonObject { ["type"] = "number" };
        return OrWithReason(dimension == Dimension.Number ? number
            : dimension == Dimension.Share ? AnyOf(number, text)
            : text, isFigure: true);
    }

    /// <summary>A plain value, or a group with it, its reason and its source.</summary>
    public static JsonObject OrWithReason(JsonObject value, bool isFigure = false)
    {
        if (!isFigure && !(value.ContainsKey("enum") && value["enum"]!.AsArray().Count > 1
            || value["type"]?.ToString() == "boolean" || value["items"]?["prefixItems"] is not null))
            return value;
        var properties = new JsonObject { ["value"] = value.DeepClone() };
        AddReasons(properties);
        return AnyOf(value, new JsonObject
        {
            ["type"] = "object",
            ["properties"] = properties,
            ["required"] = new JsonArray("value"),
            ["additionalProperties"] = false,
        });
    }

    public static JsonObject WithReasons(JsonObject map)
    {
        AddReasons((JsonObject)(map["properties"] = new JsonObject())!);
        return map;
    }

    public static void AddReasons(JsonObject properties)
    {
        properties["reason"] = Reference("reason");
        properties["source"] = Reference("source");
    }

    private static string Spellings(Dimension dimension) =>
        string.Join('|', dimension.Spellings.Where(spelling => spelling.Text.Length > 0).Select(spelling => Regex.Escape(spelling.Text)));

    public static string Name(Dimension dimension) =>
        dimension == Dimension.Number ? "number" : dimension.Name[(dimension.Name.IndexOf(' ') + 1)..].Replace(' ', '_');

    public static JsonObject Reference(string definition) => new() { ["$ref"] = $"#/$defs/{definition}" };

    /// <summary>A group whose keys are names of one kind and whose values are of another.</summary>
    public static JsonObject MapOf(JsonNode names, JsonNode values, int least = 0)
    {
        var map = new JsonObject { ["type"] = "object", ["propertyNames"] = names, ["additionalProperties"] = values };
        if (least > 0)
            map["minProperties"] = least;
        return map;
    }

    public static JsonObject AnyOf(params JsonNode[] schemas) => new() { ["anyOf"] = new JsonArray(schemas) };

    public static JsonObject AnyText() => new() { ["type"] = "string", ["minLength"] = 1 };

    public static JsonObject Pattern(string pattern) => new() { ["type"] = "string", ["pattern"] = pattern };

    public static JsonObject OneOf(params string[] values) =>
        new() { ["enum"] = new JsonArray([.. values.Select(value => (JsonNode)value)]) };

    public static JsonObject List(JsonObject items, int atLeast, int? atMost = null)
    {
        var list = new JsonObject { ["type"] = "array", ["items"] = items, ["minItems"] = atLeast };
        if (atMost is { } most)
            list["maxItems"] = most;
        return list;
    }

    public static JsonObject PathOf(JsonObject values, string? names = null)
    {
        var named = new JsonObject { ["type"] = "object", ["minProperties"] = 1, ["additionalProperties"] = values };
        if (names is not null)
            named["propertyNames"] = new JsonObject { ["pattern"] = names };
        return named;
    }

    public static JsonObject Table(params Dimension[] columns)
    {
        var row = new JsonObject
        {
            ["type"] = "array",
            ["prefixItems"] = new JsonArray([.. columns.Select(column => (JsonNode)Reference(Name(column)))]),
            ["minItems"] = columns.Length,
            ["maxItems"] = columns.Length,
        };
        return List(row, 2);
    }
}
