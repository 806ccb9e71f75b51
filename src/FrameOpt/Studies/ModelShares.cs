using FrameOpt.Analysis;
using FrameOpt.Model.Mission;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Studies;

/// <summary>Which factors matter to each response in the model itself, from designs of the study's grid.</summary>
/// <param name="Factors">The swept factors.</param>
/// <param name="Designs">How many designs fly; each counts once.</param>
/// <param name="WithinLimits">How many of them meet every limit.</param>
/// <param name="Responses">One for each response.</param>
public sealed record ModelShares(
    IReadOnlyList<StudyFactor> Factors, long Designs, long WithinLimits, IReadOnlyList<ResponseShares> Responses)
{
    /// <summary>True when only some levels of the study's grid, or of what is between two ends, were taken.</summary>
    public bool IsThinned { get; init; }
}

/// <summary>The shares of the factors in one response.</summary>
/// <param name="Response">As the study names it.</param>
/// <param name="Everywhere">One a factor, over all designs that fly; none where the response does not change.</param>
/// <param name="WithinLimits">The same over the designs that meet every limit; none without limits, or where none meets them.</param>
public sealed record ResponseShares(Response Response, IReadOnlyList<FactorShare> Everywhere, IReadOnlyList<FactorShare> WithinLimits);

/// <summary>How much every input of a study moves its responses, by elementary effects.</summary>
/// <param name="Paths">Random paths through the cube of all inputs, each with one step of every input.</param>
/// <param name="Inputs">The swept factors, then the uncertain numbers.</param>
/// <param name="Responses">One for each response.</param>
public sealed record Screening(int Paths, IReadOnlyList<ScreenedInput> Inputs, IReadOnlyList<ScreenedResponse> Responses);

/// <summary>A factor or an uncertain number.</summary>
/// <param name="Name">As the study file writes it.</param>
/// <param name="Uncertain">What an uncertain number is; null for a factor.</param>
public sealed record ScreenedInput(string Name, NoiseSource? Uncertain)
{
    /// <summary>True for what the study varies.</summary>
    public bool IsFactor => Uncertain is null;
}

/// <summary>The elementary effects on one response.</summary>
/// <param name="Response">As the study names it.</param>
/// <param name="Effects">One for each input, in the response's unit.</param>
public sealed record ScreenedResponse(Response Response, IReadOnlyList<ElementaryEffect> Effects);
