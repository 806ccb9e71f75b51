using FrameOpt.Studies;
using FrameOpt.StudyFile.Sections;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile;

/// <summary>Reads what was decided on.</summary>
internal static class DecisionReader
{
    private const string Chosen = "chosen";

    /// <summary>The decision; null when the study records none or after an error.</summary>
    /// <param name="file">The whole file.</param>
    /// <param name="study">As read, with its line.</param>
    public static Decision? Read(Section file, Study study)
    {
        if (file.Child("decision", LineKeys.Decision) is not { } decision)
            return null;
        var design = decision.Value(Chosen) is Node.Map map
            && Section.Open(map, decision.KeyAt(Chosen), decision.PathOf(Chosen), LineKeys.DecidedDesign, decision.DiagnosticBag)
                is { } given
            ? GeometryReader.Read(given, study, "the design decided on") : (Model.FrameGeometry?)null;
        IReadOnlyList<Node> names = decision.Value(Chosen) switch
        {
            Node.Scalar one => [one],
            Node.List => decision.List(Chosen),
            _ => [],
        };
        foreach (var name in names.OfType<Node.Scalar>().Where(name => study.Line?.Fixed.All(one => one.Name != name.Text.Trim()) ?? true))
            decision.DiagnosticBag.Add(name, "The decision names no geometry of `line.geometries`.",
                study.Line is { Fixed.Count: > 0 } line
                    ? $"They are {string.Join(", ", line.Fixed.Select(one => one.Name))}."
                    : "Put the geometries that were chosen there, each with its name, or write the dimensions of one "
                        + "design under `chosen`.");
        return new Decision(design, [.. names.OfType<Node.Scalar>().Select(name => name.Text.Trim())], Line(decision, "date"),
            Line(decision, "by"), Line(decision, "reason"), [.. decision.List("rejected").OfType<Node.Scalar>().Select(one =>
                OneLine(one.Text))]);
    }

    private static string Line(Section decision, string key) => OneLine(decision.Text(key) ?? "");

    private static string OneLine(string text) => text.ReplaceLineEndings(" ").Trim();
}
