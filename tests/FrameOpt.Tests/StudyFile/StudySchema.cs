using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Running;
using FrameOpt.Search;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;
using FrameOpt.StudyFile.Sections;
using FrameOpt.StudyFile.Values;
using static FrameOpt.Tests.StudyFile.SchemaPieces;

namespace FrameOpt.Tests.StudyFile;

/// <summary>
/// Makes docs/study.schema.json: keys from the reader's own list, words and kinds of quantity from docs/study-file.md, unit spellings
/// from the reader's own table.
/// </summary>
internal sealed class StudySchema(IReadOnlyDictionary<string, StudySchema.Words> words)
{
    /// <summary>What the document says of a key.</summary>
    internal sealed record Words(string Wants, string Default, string Source);

    private static readonly JsonSerializerOptions indented =
        new() { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public string Text()
    {
        var schema = Section("", isChange: false);
        var whole = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "FrameOpt study file, format 1",
            ["description"] =
                "Key by key in docs/study-file.md. Made from the program's own list of keys by its tests; not edited by hand.",
        };
        foreach (var (key, value) in schema.ToList())
        {
            schema.Remove(key);
            whole[key] = value;
        }

        var definitions = new JsonObject();
        foreach (var dimension in Dimension.All)
            definitions[Name(dimension)] = OfDimension(dimension);
        definitions["reason"] = AnyText();
        definitions["reason"]!["description"] = "Why it is so; printed on every output.";
        definitions["source"] = AnyText();
        definitions["source"]!["description"] = "Where it is from; printed on every output.";
        definitions["response"] = OfResponse();
        definitions["any_response"] = AnyResponse();
        definitions["amount"] = new JsonObject
        {
            ["description"] = "In the response's own kind of unit; a plain number for one without.",
            ["anyOf"] = new JsonArray(Reference("number"), new JsonObject { ["type"] = "string", ["pattern"] = $"^{Number} *[^0-9 ].*$" }),
        };
        whole["$defs"] = definitions;
        return whole.ToJsonString(indented).ReplaceLineEndings("\n") + "\n";
    }

    /// <summary>A group of keys; in a change (a variant) none of them must be there.</summary>
    private JsonObject Section(string path, bool isChange)
    {
        var section = StudyKeys.All.Single(section => section.Path == path);
        var properties = new JsonObject();
        // A variant holds no variants, and its format is the file's.
        var isVariant = isChange && path.Length == 0;
        foreach (var key in section.Keys.Where(key => !isVariant || key.Name is not ("format" or "template" or "variants")))
            properties[key.Name] = Described(path.Length > 0 ? $"{path}.{key.Name}" : key.Name, isChange);
        if (path.Length > 0 && path != "decision" && !path.StartsWith("line.customers"))
            AddReasons(properties);
        var schema = new JsonObject { ["type"] = "object", ["properties"] = properties, ["additionalProperties"] = false };
        if (isChange)
        {
            schema["minProperties"] = 1;
            return schema;
        }

        string[] required = [.. section.Keys.Where(key => key is { IsRequired: true, StandIn: null }).Select(key => key.Name)];
        if (required.Length > 0)
            schema["required"] = new JsonArray([.. required.Select(name => (JsonNode)name)]);
        if (Together.TryGetValue(path, out var rule))
        {
            foreach (var (key, value) in JsonNode.Parse(rule)!.AsObject())
                schema[key] = value!.DeepClone();
        }

        return schema;
    }

    private JsonObject Described(string path, bool isChange)
    {
        var schema = path == "template" ? Value(path, isChange) : OrWithReason(Value(path, isChange));
        var row = words[path];
        var parts = new List<string> { Plain(row.Wants) };
        if (row.Default is not "-" and not "none")
            parts.Add($"Default: {Plain(row.Default)}");
        if (row.Source.Length > 0)
            parts.Add($"Source: {Plain(row.Source)}");
        if (schema["description"] is null)
            schema["description"] = $"{string.Join(". ", parts)}.";
        return schema;
    }

    private JsonObject Value(string path, bool isChange) => path switch
    {
        "format" => new JsonObject { ["const"] = 1 },
        "title" or "question" or "machine.masses[].name" or "balanced_band.phase" => AnyText(),
        "machine.masses" when isChange =>
            AnyOf(List(Section("machine.masses[]", false), 1), PathOf(AnyOf(Section("machine.masses[]", true), OneOf("none")))),
        "machine.masses" => List(Section("machine.masses[]", false), 1),
        "template" => OneOf([.. FrameOpt.StudyFile.StudyTemplate.All.Select(template => template.Name)]),
        "machine.arms" => OneOf("rigid", "moving"),
        "machine.propeller.turns" or "line.geometries[].turns" => OneOf("clockwise", "counter-clockwise"),
        "machine.propeller.coefficients" => Table(Dimension.Number, Dimension.Number, Dimension.Number),
        "machine.engine.torque" => Table(Dimension.Revolutions, Dimension.Torque),
        "wing.yaw_leverage" => AnyOf(Reference("number"), Section(path, isChange)),
        "wing.polar.rows" => Table(Dimension.Share, Dimension.Speed, Dimension.Number),
        "mission" => WithReasons(PathOf(Section("mission.<phase>", isChange), @"^[^\[\]]+$")),
        "mission.<phase>.power" => Power(),
        "objectives" => List(Section("objectives[]", false), 2, 5),
        "objectives[].minimise" or "objectives[].maximise" or "limits[].response" => Reference("any_response"),
        "objectives[].resolution" or "limits[].at_least" or "limits[].at_most" => Reference("amount"),
        "limits" => List(Section("limits[]", false), 0),
        "search.method" => OneOf("exhaustive", "NSGA-II", "NSGA-III"),
        "search.stop.target" => MapOf(Reference("any_response"), Reference("amount"), least: 1),
        "ranking.method" => OneOf("distance to ideal", "topsis"),
        "ranking.weights" => WithReasons(MapOf(AnyOf(Reference("any_response"), OneOf("reason", "source")),
            OrWithReason(new JsonObject { ["type"] = "number", ["minimum"] = 0 }, isFigure: true))),
        "factors.<factor>.from" or "factors.<factor>.to" or "factors.<factor>.step" => LengthOrAngle(),
        "factors.<factor>.values" => List(LengthOrAngle(), 1),
        "factors.holes.left" or "factors.holes.right" => Section("factors.holes.<side>", isChange),
        _ when Regex.IsMatch(path, @"^factors\.holes\..*(values|drilled)$") => List(Reference("length"), 0, 200),
        "plan.kind" => OneOf("full factorial", "fractional factorial", "Plackett-Burman", "central composite", "Box-Behnken",
            "definitive screening", "D-optimal", "I-optimal", "Latin hypercube", "Sobol sequence", "Halton sequence"),
        "plan.levels" => AnyOf(Reference("number"), OneOf("as made")),
        "plan.within" => OneOf("limits"),
        "plan.axial" => OneOf("rotatable", "spherical", "face-centred", "orthogonal"),
        "plan.model" => OneOf("linear", "interactions", "quadratic"),
        "plan.generators" => List(Pattern("^[A-Z] *= *-?[A-Z]+$"), 1),
        "plan.responses" => List(Reference("response"), 1),
        "plan.hard_to_change" => List(AnyText(), 1),
        "line.objective" => AnyOf(OneOf("mean", "worst"), Pattern($"^(percentile|blend) +{Number} *%?$")),
        "line.serve" => Pattern($"^(at least +)?{Number} *%?( of .+)?$"),
        "line.response" => Reference("response"),
        "machine.masses[].body" or "mission.<phase>.settled" or "search.polish" or "line.maximise" or "line.allow_both_rotations" =>
            new JsonObject { ["type"] = "boolean" },
        "line.candidates" => OneOf("front", "grid"),
        "line.common" => OneOf("nothing", "spacing", "frame"),
        "line.pilot" or "line.customers[].name" or "decision.date" or "decision.by" or "decision.reason"
            or "machine.datum" or "machine.hang_point" or "search.start" or "plan.made" => AnyText(),
        "line.geometries" => List(Section("line.geometries[]", false), 1, 26),
        "line.geometries[].name" => Pattern("^.{1,6}$"),
        "line.options" => PathOf(PathOf(ProductLineChoice())),
        "line.customers" => AnyOf(AnyText(), List(WithOptions("line.customers[]"), 1), WithOptions("line.customers")),
        "decision.chosen" => AnyOf(AnyText(), List(AnyText(), 1, 26), Section(path, isChange)),
        "decision.rejected" => List(AnyText(), 0),
        "variants" => PathOf(Section("", isChange: true)),
        "origins" => new JsonObject { ["type"] = "object" },
        "noise" => AnyOf(OneOf("none"), Section(path, isChange)),
        "noise.correlations" => List(new JsonObject { ["type"] = "array", ["minItems"] = 3, ["maxItems"] = 3 }, 0),
        "noise.<source>.normal" or "noise.<source>.from" or "noise.<source>.to" => Deviation(),
        "noise.<source>.uniform" => List(Deviation(), 2, 2),
        "noise.<source>.triangle" => List(Deviation(), 3, 3),
        "noise.<source>.table" => List(Deviation(), 1, 1000),
        _ when NoiseSource.All.Concat(MeasurableSource.All).Any(source => path == $"noise.{source.Name}") =>
            AnyOf(OneOf("none"), Section("noise.<source>", isChange)),
        _ when path.StartsWith("factors.") && !path.StartsWith("factors.holes") => Factor(path["factors.".Length..], isChange),
        _ when StudyKeys.All.Any(section => section.Path == path) => Section(path, isChange),
        _ => Reference(Name(DimensionOf(path))),
    };

    /// <summary>What a choice of a line's option may change.</summary>
    private JsonObject ProductLineChoice()
    {
        var properties = new JsonObject(new[] { "machine", "wing", "mission", "strength", "limits" }
            .Select(key => KeyValuePair.Create(key, (JsonNode?)Described(key, isChange: true))));
        return new JsonObject { ["type"] = "object", ["properties"] = properties, ["additionalProperties"] = false, ["minProperties"] = 1 };
    }

    /// <summary>A group that has a key for each option of the line too.</summary>
    private JsonObject WithOptions(string path)
    {
        var section = Section(path, isChange: false);
        section.Remove("additionalProperties");
        return section;
    }

    /// <summary>The kind of quantity with which the document's words begin.</summary>
    private Dimension DimensionOf(string path) => Dimension.All
        .Where(dimension => Regex.IsMatch(words[path].Wants, $@"^{Name(dimension).Replace('_', ' ')}\b"))
        .MaxBy(dimension => dimension.Name.Length)
            ?? throw new InvalidOperationException($"docs/study-file.md does not say what {path} is");

    private JsonObject Factor(string name, bool isChange) => AnyOf(
        Reference(Name(FactorReader.DimensionOf(FactorCatalogue.Find(name)!))), Section("factors.<factor>", isChange));

    private static string Plain(string cell) => cell.Replace("`", "").TrimEnd('.');
}
