using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.ProductLine;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Sections;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile;

/// <summary>Reads what is asked of a product line.</summary>
internal static class ProductLineReader
{
    private const string Objectives = "`mean`, `worst`, or `percentile` or `blend` with a share in % after it";
    private const double AssumedSeconds = 60;

    private static readonly Dictionary<string, ProductLineCommon> commons = new()
    {
        ["nothing"] = ProductLineCommon.Nothing,
        ["spacing"] = ProductLineCommon.Spacing,
        ["frame"] = ProductLineCommon.Frame,
    };

    /// <summary>The line a study asks for, or null.</summary>
    /// <param name="study">The section of the whole file.</param>
    /// <param name="root">The file, to change by the options.</param>
    /// <param name="read">The study itself; null after errors, and then the options are not checked.</param>
    /// <param name="responses">Finds responses by name.</param>
    /// <param name="needs">Says what they need.</param>
    public static ProductLineSetting? Read(Section study, Node.Map root, Study? read, ResponseReader responses, Prerequisites needs)
    {
        if (study.Child("line", LineKeys.Line) is not { } line)
            return null;
        var options = ProductLineOptionsReader.Options(line);
        var fixedOnes = ProductLineGeometriesReader.Sections(line);
        var count = ProductLineGeometriesReader.Count(line, fixedOnes.Count);
        var goal = CostResponse(line, responses, needs);
        var pitch = line.OptionalNumber("hole_pitch", Dimension.Length, AllowedRange.PositiveUpTo(0.2, "200 mm"));
        var fromGrid = line.Has("candidates") && line.Choice("candidates", ["front", "grid"]) == "grid";
        var objective = Objective(line);
        var common = line.Has("common") && line.Choice("common", [.. commons.Keys]) is { } word ? commons[word] : ProductLineCommon.Nothing;
        var (customers, words, inPieces) = ProductLineCustomersReader.Read(line, options);
        var pilot = line.Text("pilot")?.Trim();
        var bothRotations = line.Has("allow_both_rotations") && line.Boolean("allow_both_rotations");
        var serve = Serve(line);
        AddAssumption(line);
        var upTo = line.Integer("up_to", Math.Min(count + 2, ProductLineSetting.MaxGeometries), count, ProductLineSetting.MaxGeometries);
        var time = line.OptionalNumber("time", Dimension.Time, AllowedRange.PositiveUpTo(7 * 86_400, "168 h")) ?? AssumedSeconds;
        if (read is null || line.DiagnosticBag.HasErrors)
            return null;
        CheckCandidates(line, read, pitch, fromGrid);
        var configurations = ProductLineOptionsReader.Configurations(line, root, read, options, pilot);
        if (configurations is null)
            return null;
        CheckRotations(line, read, configurations, fromGrid);
        var setting = new ProductLineSetting(
            count, objective, goal!, [.. options.Select(option => option.Option)], configurations, customers)
        {
            UpTo = upTo,
            FromGrid = fromGrid,
            Common = common,
            HolePitchMetres = pitch,
            AllowBothRotations = bothRotations,
            Time = TimeSpan.FromSeconds(time),
            CustomersDescription = words,
            InPieces = inPieces,
            Serve = serve,
        };
        var reader = new ProductLineGeometriesReader(read, setting.Rotations, setting.SeparateRotations);
        var geometries = reader.Read(fixedOnes, pitch);
        if (!line.DiagnosticBag.HasErrors)
            reader.CheckCommon(line, geometries, common, fromGrid && upTo > geometries.Count);
        return setting with { Fixed = geometries };
    }

    private static void AddAssumption(Section line)
    {
        void Default(string key, string value, string source)
        {
            if (!line.Has(key))
                line.DiagnosticBag.AddAssumption($"{key.Replace('_', ' ')} of the line", value, source);
        }

        Default("objective", "mean", "assumption: the share-weighted mean of the customers");
        Default("response", "residual_rms", "assumption: what the pilot has to hold over the mission");
        Default("candidates", "front", "assumption: the front of the study's own customer; grid takes every design");
        Default("common", "nothing", "assumption: any geometries may go together");
        Default("time", "60 s for each number of geometries", "assumption");
    }

    private static StudyObjective? CostResponse(Section line, ResponseReader responses, Prerequisites needs)
    {
        var maximise = line.Has("maximise") && line.Boolean("maximise");
        var name = line.Has("response") ? line.Text("response") : "residual_rms";
        var at = line.At("response");
        if (name is null || responses.Read(name, at) is not { } response)
            return null;
        needs.Check(response, at);
        // A mean of what may be below 0 without being a side says nothing.
        if (!maximise && response.Entry.Sign == ResponseSign.Either)
            line.DiagnosticBag.Add(at, $"{response.Name} may be below 0, so that little of it is not what a customer wants.",
                "Write `response: residual_rms`, or bound it by a limit.");
        return new StudyObjective(response, maximise, ResponseReader.IsSigned(response), 0);
    }

    private static ProductLineObjective Objective(Section line)
    {
        if (line.Text("objective") is not { } text)
            return new ProductLineObjective.Mean();
        var parts = text.Trim().Split(' ', 2, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var at = line.At("objective");
        double Share(AllowedRange bound) => parts.Length < 2
            ? Missing(line, at, parts[0])
            : Quantity.Read(new Node.Scalar(parts[1], false, at.Line, at.Column), $"line.objective, {parts[0]}",
                Dimension.Share, bound, line.DiagnosticBag)?.Base ?? double.NaN;
        switch (parts[0].ToLowerInvariant())
        {
            case "mean" when parts.Length == 1:
                return new ProductLineObjective.Mean();
            case "worst" when parts.Length == 1:
                return new ProductLineObjective.Worst();
            case "percentile":
                return new ProductLineObjective.Percentile(Share(AllowedRange.PositiveUpTo(1, "100 %")));
            case "blend":
                return new ProductLineObjective.Blend(Share(AllowedRange.NonNegativeUpTo(1, "100 %")));
            default:
                line.DiagnosticBag.Add(at, "Unknown objective of the product line.", $"Write {Objectives}.");
                return new ProductLineObjective.Mean();
        }
    }

    /// <summary>The share that must be served: "at least 95 % of pieces".</summary>
    private static double Serve(Section line)
    {
        const string atLeast = "at least ";
        if (line.Text("serve")?.Trim() is not { } text)
            return 1;
        var at = line.At("serve");
        var share = text.StartsWith(atLeast, StringComparison.OrdinalIgnoreCase) ? text[atLeast.Length..].Split(" of ")[0] : text;
        return Quantity.Read(new Node.Scalar(share.Trim(), false, at.Line, at.Column), "line.serve", Dimension.Share,
            AllowedRange.PositiveUpTo(1, "100 %"), line.DiagnosticBag)?.Base ?? double.NaN;
    }

    private static double Missing(Section line, Node at, string word)
    {
        line.DiagnosticBag.Add(at, $"The {word} wants a share.", word == "blend"
            ? "Write after it the weight of the worst customer in %."
            : "Write after it in % how many of the customers it covers.");
        return double.NaN;
    }

    /// <summary>Says where engines that turn both ways find candidates for one way only.</summary>
    private static void CheckRotations(
        Section line, Study read, IReadOnlyList<ProductLineConfiguration> configurations, bool fromGrid)
    {
        if (configurations.All(configuration => configuration.Rotation == configurations[0].Rotation))
            return;
        if (!fromGrid)
            line.DiagnosticBag.AddWarning(line.Has("candidates") ? line.At("candidates") : line.Owner,
                "Engines turn both ways, but the front is that of the study's own machine, which turns one way. Write "
                    + "`candidates: grid`.");
        var offset = read.Factor(GeometryInput.LateralOffset);
        if (fromGrid && (offset.LevelsSi[0] >= 0 || offset.LevelsSi[^1] <= 0))
            line.DiagnosticBag.AddWarning(line.At("candidates"),
                "Engines turn both ways, but lateral_offset is to one side only: a propeller that turns the other way mostly wants the "
                    + "hang points on the other side. Let the range of lateral_offset go to both sides of 0.");
    }

    private static void CheckCandidates(Section line, Study read, double? pitch, bool fromGrid)
    {
        var at = line.Has("candidates") ? line.At("candidates") : line.Owner;
        if (read.Holes is not null && pitch is not null)
        {
            line.DiagnosticBag.Add(line.At("hole_pitch"), "hole_pitch and factors.holes both say where holes are.", "Remove `hole_pitch`.");
            return;
        }

        if (OffsetPitch.On(read, pitch) is not { } study)
        {
            line.DiagnosticBag.Add(line.At("hole_pitch"), "No level of lateral_offset is a multiple of hole_pitch.",
                "Choose a pitch that is a multiple of the step of lateral_offset, whose range holds 0 or a multiple.");
            return;
        }

        if (!fromGrid)
            return;
        var longest = study.Factors.Where(factor => !factor.IsContinuous).MaxBy(factor => factor.LevelsSi.Count);
        if (study.Factors.FirstOrDefault(factor => factor.IsContinuous) is { } endless)
            line.DiagnosticBag.Add(at, $"{endless.Name} has no step, so there is no grid to choose from.",
                "Write `candidates: front`, or give it a step.");
        else if (study.GridSize is not { } size || size > RunLimits.MaxCandidates)
            line.DiagnosticBag.Add(
                at,
                FormattableString.Invariant($"The grid has {study.GridSize ?? long.MaxValue} designs; ")
                    + FormattableString.Invariant($"{RunLimits.MaxCandidates} is the most a line is chosen from."),
                FormattableString.Invariant($"Take coarser steps, first of {longest!.Name} with its {longest.LevelsSi.Count} levels, ")
                    + "give `hole_pitch`, or write `candidates: front`.");
    }
}
