using FrameOpt.Model;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.StudyFile.Plausibility;

/// <summary>Compares the machine and the wing of a study with the usual ranges.</summary>
internal static class PlausibilityChecks
{
    private const double Millimetre = 0.001;

    /// <summary>Warns of everything unusual in the machine, its bench run apart.</summary>
    public static void Check(Machine machine, Func<string, Node> placeOf, DiagnosticBag diagnostics)
    {
        var masses = machine.Masses;
        var body = masses.Index().First(item => item.Item.IsBody).Index;
        UsualRanges.BodyMass.Check(machine.BodyMassKilograms, placeOf($"machine.masses.{body}.mass"), diagnostics);
        foreach (var (index, item) in masses.Index().Where(item => IsEngine(item.Item, masses)))
            UsualRanges.EngineBehindBody.Check((GeometryChecks.BodyForward(machine) - item.At.ForwardMetres) / Millimetre,
                placeOf($"machine.masses.{index}.forward"), diagnostics, $" (`{item.Name}`)");
        UsualRanges.Diameter.Check(machine.Propeller.DiameterMetres, placeOf(UsualRanges.Diameter.Key), diagnostics);
        UsualRanges.Lean.Check(machine.Pilot.LeanMetres / Millimetre, placeOf(UsualRanges.Lean.Key), diagnostics);
        UsualRanges.DragArea.Check(machine.Pilot.DragAreaSquareMetres, placeOf(UsualRanges.DragArea.Key), diagnostics);
        if (machine.Engine is not { } engine)
            return;
        UsualRanges.Reduction.Check(engine.Reduction, placeOf(UsualRanges.Reduction.Key), diagnostics);
        UsualRanges.Efficiency.Check(engine.Efficiency, placeOf(UsualRanges.Efficiency.Key), diagnostics);
    }

    /// <summary>Warns of everything unusual in the wing.</summary>
    public static void Check(Wing wing, Machine machine, Func<string, Node> placeOf, DiagnosticBag diagnostics)
    {
        var allUp = machine.MassKilograms + wing.MassKilograms;
        UsualRanges.WingLoading.Check(allUp / wing.AreaSquareMetres, placeOf(UsualRanges.WingLoading.Key), diagnostics);
        UsualRanges.AspectRatio.Check(wing.SpanMetres * wing.SpanMetres / wing.AreaSquareMetres, placeOf(UsualRanges.AspectRatio.Key),
            diagnostics);
        UsualRanges.Lines.Check(wing.LineLengthMetres, placeOf(UsualRanges.Lines.Key), diagnostics);
        UsualRanges.LineSpread.Check(wing.LineSpreadMetres / wing.SpanMetres, placeOf(UsualRanges.LineSpread.Key), diagnostics);
        var points = wing.Polar.Points;
        UsualRanges.Trim.Check(points[0].AirspeedMetresPerSecond, placeOf("wing.polar.rows.0"), diagnostics);
        foreach (var (index, point) in points.Index())
            UsualRanges.Glide.Check(point.GlideRatio, placeOf($"wing.polar.rows.{index}"), diagnostics);
    }

    /// <summary>True for what is named an engine or a motor; with none of that name, for the heaviest of what does not lean.</summary>
    private static bool IsEngine(MassItem item, IReadOnlyList<MassItem> masses) => masses.Any(IsNamedEngine)
        ? IsNamedEngine(item)
        : !item.IsBody && item.MassKilograms == masses.Where(other => !other.IsBody).Max(other => other.MassKilograms);

    private static bool IsNamedEngine(MassItem item) => !item.IsBody
        && (item.Name.Contains("engine", StringComparison.OrdinalIgnoreCase)
            || item.Name.Contains("motor", StringComparison.OrdinalIgnoreCase));
}
