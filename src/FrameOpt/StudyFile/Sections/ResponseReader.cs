using System.Text.RegularExpressions;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the name of a response: residual_rms, or residual[cruise].</summary>
internal sealed partial class ResponseReader(IReadOnlyList<Phase> phases, DiagnosticBag diagnostics)
{
    /// <summary>True for what goes to either side, so that its magnitude is ranked.</summary>
    public static bool IsSigned(Response response) => response.Entry.Sign == ResponseSign.Side;

    /// <summary>The response named, or null after an error; one over cases, "percentile 90 of effort_worst", too.</summary>
    /// <param name="text">Of the node, or a key.</param>
    /// <param name="at">The node.</param>
    public Response? ReadAny(string text, Node at) =>
        CaseResponseReader.Read(this, text.Trim(), at, diagnostics, out var response) ? response : Read(text, at);

    /// <summary>The response named, of one case, or null after an error.</summary>
    /// <param name="text">Of the node, or a key.</param>
    /// <param name="at">The node.</param>
    public Response? Read(string text, Node at)
    {
        if (CaseResponseReader.IsOverCases(text.Trim()))
        {
            diagnostics.Add(at, $"`{text.Trim()}` is over many cases; only objectives, limits and their ranking can be.",
                "Write the response of one case, for example residual_rms.");
            return null;
        }

        var name = Name().Match(text.Trim());
        if (!name.Success)
        {
            diagnostics.Add(at, "This is not the name of a response.",
                "Write a name from docs/study-file.md; for a quantity of a phase, with the phase in brackets after it.");
            return null;
        }

        var word = name.Groups["word"].Value;
        return name.Groups["phase"] is { Success: true } phase ? OfPhase(word, phase.Value.Trim(), at) : OfMission(word, at);
    }

    private Response.OfMission? OfMission(string word, Node at)
    {
        if (Find(ResponseCatalogue.OfMissions, word) is { } quantity)
            return new Response.OfMission(quantity);
        if (Find(ResponseCatalogue.OfPhases, word) is not null)
            diagnostics.Add(
                at, $"{word} is a quantity of a phase.",
                $"Say of which: `{word}[{(phases.Count > 0 ? phases.MaxBy(p => p.Weight)!.Name : "cruise")}]`.");
        else
            diagnostics.Add(at, $"There is no response `{word}`.", Nearest(word));
        return null;
    }

    private Response.OfPhase? OfPhase(string word, string phaseName, Node at)
    {
        if (Find(ResponseCatalogue.OfPhases, word) is not { } quantity)
        {
            if (Find(ResponseCatalogue.OfMissions, word) is not null)
                diagnostics.Add(at, $"{word} is of the whole mission.", $"Write `{word}` without a phase.");
            else
                diagnostics.Add(at, $"There is no response `{word}`.", Nearest(word));
            return null;
        }

        for (var i = 0; i < phases.Count; i++)
        {
            if (phases[i].Name == phaseName)
                return new Response.OfPhase(quantity, i, phaseName);
        }

        // Without any phase the mission itself is already reported.
        if (phases.Count > 0)
            diagnostics.Add(at, $"The mission has no phase `{phaseName}`.",
                NearestName.Of(phaseName, phases.Select(p => p.Name)) is { } near
                ? $"Did you mean `{word}[{near}]`?"
                : $"Its phases are {string.Join(", ", phases.Select(p => p.Name))}.");
        return null;
    }

    private static string Nearest(string word)
    {
        if (NearestName.Of(word, ResponseCatalogue.All.Select(entry => entry.Name)) is not { } near)
            return "All responses are listed in docs/study-file.md.";
        return Find(ResponseCatalogue.OfMissions, near) is not null
            ? $"Did you mean `{near}`?"
            : $"Did you mean `{near}[...]`, with a phase between the brackets?";
    }

    private static T? Find<T>(IReadOnlyList<T> entries, string name)
        where T : ResponseEntry => entries.FirstOrDefault(entry => entry.Name == name);

    [GeneratedRegex(@"^(?<word>[^\[\]]+)(\[(?<phase>[^\[\]]+)\])?$")]
    private static partial Regex Name();
}

/// <summary>Reads an amount of a response, in the unit the response is held in.</summary>
internal static class ResponseAmount
{
    /// <summary>NaN when wrong, null when the key is absent.</summary>
    public static double? Read(Section section, string key, Response response, AllowedRange bound)
    {
        if (!section.Has(key))
            return null;
        return section.Value(key) is { } node ? Of(node, $"{section.Path}.{key} of {response.Name}", response, bound,
            section.DiagnosticBag) ?? double.NaN : double.NaN;
    }

    /// <summary>The amount in a node, or null after an error.</summary>
    public static double? Of(Node node, string name, Response response, AllowedRange bound, DiagnosticBag diagnostics)
    {
        var dimension = response.Entry is CaseQuantity { IsShare: true } ? Dimension.Share : Dimension.OfUnit(response.Unit);
        if (Quantity.Read(node, name, dimension, bound, diagnostics) is not { } amount)
            return null;
        return amount.Unit.Text == response.Unit ? amount.Value : amount.Base / dimension.FindUnit(response.Unit)!.ToBase(1);
    }
}

/// <summary>What else a study must give before a response has a value.</summary>
internal sealed class Prerequisites(bool hasEngine, bool hasStrength, bool hasBaseline, DiagnosticBag diagnostics)
{
    public void Check(Response response, Node at)
    {
        var (missing, key) = response.Entry.Needs switch
        {
            ResponseNeed.Strength when !hasStrength => ("strength", StudyKeys.File.Find("strength")!),
            ResponseNeed.Baseline when !hasBaseline => ("baseline", StudyKeys.File.Find("baseline")!),
            ResponseNeed.Engine when !hasEngine => ("machine.engine", StudyKeys.Machine.Find("engine")!),
            _ => ("", null),
        };
        if (key is not null)
            diagnostics.Add(at, $"{response.Name} needs {missing}, which the study does not give.",
                $"Add {missing} with {key.Wanted}, or leave this response out.");
    }
}
