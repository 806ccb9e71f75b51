using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Plausibility;

/// <summary>Compares a whole study with the usual ranges. Everything outside them is a warning: a builder may know better.</summary>
internal static class StudyPlausibility
{
    /// <summary>Warns of everything unusual in a study without errors.</summary>
    public static void Check(Node root, Machine machine, Wing wing, IReadOnlyList<Phase> mission, IReadOnlyList<StudyFactor> factors,
        FrameGeometry? baseline, DiagnosticBag diagnostics)
    {
        Node PlaceOf(string path) => Places.Of(root, path);
        PlausibilityChecks.Check(machine, PlaceOf, diagnostics);
        BenchChecks.Check(machine, wing, mission, BenchRpm(PlaceOf(UsualRanges.TipSpeed.Key)), PlaceOf, diagnostics);
        PlausibilityChecks.Check(wing, machine, PlaceOf, diagnostics);
        GeometryChecks.Check(factors, baseline, machine, PlaceOf, diagnostics);
    }

    private static double? BenchRpm(Node at) =>
        at is Node.Scalar scalar && NumberText.Parse(scalar.Text) is { Message: null, Unit: "rpm", Value: var rpm } ? rpm : null;
}
