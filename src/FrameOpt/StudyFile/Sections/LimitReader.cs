using FrameOpt.Studies;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the limits.</summary>
internal static class LimitReader
{
    public static IReadOnlyList<StudyLimit> Read(Section study, ResponseReader responses, Prerequisites needs) =>
    [
        .. study.List("limits")
            .Select((node, index) => Section.Open(node, node, $"limits[{index + 1}]", StudyKeys.Limit, study.DiagnosticBag))
            .OfType<Section>()
            .Select(section => ReadOne(section, responses, needs))
            .OfType<StudyLimit>(),
    ];

    private static StudyLimit? ReadOne(Section section, ResponseReader responses, Prerequisites needs)
    {
        if (!section.Has("at_least") && !section.Has("at_most"))
            section.DiagnosticBag.Add(section.Owner, "This limit has no bound.", "Add `at_least: ...`, `at_most: ...`, or both.");
        if (section.Text("response") is not { } name || responses.Read(name, section.At("response")) is not { } response)
            return null;
        needs.Check(response, section.At("response"));
        var atLeast = ResponseAmount.Read(section, "at_least", response, AllowedRange.None);
        // An upper bound alone on what goes to either side bounds its size.
        var magnitude = ResponseReader.IsSigned(response) && !section.Has("at_least");
        var atMost = ResponseAmount.Read(section, "at_most", response, magnitude ? AllowedRange.NonNegative : AllowedRange.None);
        if (atLeast > atMost)
            section.DiagnosticBag.Add(section.At("at_least"), "at_least is above at_most: nothing can pass.", "Exchange the two.");
        return new StudyLimit(response, magnitude, atLeast, atMost);
    }
}
