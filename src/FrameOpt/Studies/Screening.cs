using FrameOpt.Analysis;
using FrameOpt.Model.Mission;

namespace FrameOpt.Studies;

/// <summary>How much every input of a study moves its responses, by elementary effects.</summary>
/// <param name="Paths">Random paths through the cube of all inputs, each with one step of every input.</param>
/// <param name="Inputs">Names of the swept factors, then titles of the uncertain numbers.</param>
/// <param name="Factors">How many of them are factors.</param>
/// <param name="Responses">One for each response.</param>
public sealed record Screening(int Paths, IReadOnlyList<string> Inputs, int Factors, IReadOnlyList<ScreenedResponse> Responses);

/// <summary>The elementary effects on one response.</summary>
/// <param name="Response">As the study names it.</param>
/// <param name="Effects">One for each input, in the response's unit.</param>
public sealed record ScreenedResponse(Response Response, IReadOnlyList<ElementaryEffect> Effects);
