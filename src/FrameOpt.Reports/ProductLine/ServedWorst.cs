using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.ProductLine;

/// <summary>How a badly served customer is served, in a pilot's words: the phase, the side, the lean, and what keeps a better geometry from
/// them.</summary>
internal static class ServedWorst
{
    /// <summary>Phases within this part of the hardest one are as hard.</summary>
    private const double AsHard = 0.05;

    /// <summary>"Worst served: dealer lake, 70 kg, small engine: climb and glide, lean 60 of 75 mm to the left; the limit pitch swing at
    /// most
    /// 14 deg keeps B from them."</summary>
    public static string Sentence(ProductLineResult result, SegmentAssignment served)
    {
        var fit = Fit(result, served);
        return $"Worst served: {ProductLineText.Name(result.Setting, served.Row)} "
            + $"({ProductLineText.Configuration(result.Setting, served.Row)}): "
            + (fit.Own is { } own ? $"frame {own.Geometry.Name}, {Hardest(fit, own)}" : "no frame of the line is allowed")
            + $"{Kept(fit)}.";
    }

    /// <summary>The same for a cell of a table: hardest phases and lean.</summary>
    public static string Hardest(ProductLineResult result, SegmentAssignment served) =>
        Fit(result, served) is { Own: { } own } fit ? Hardest(fit, own) : "-";

    private static CustomerFit Fit(ProductLineResult result, SegmentAssignment served) =>
        CustomerFit.Of(result, result.Setting.Customers[served.Row.Customers[0]]);

    private static string Hardest(CustomerFit fit, FittedFrame own)
    {
        var settled = own.Design.Phases.Where(phase => phase.Phase.IsSettled).ToList();
        var most = settled.Max(phase => phase[PhaseQuantity.Effort]);
        if (double.IsInfinity(most))
            return $"no lean cures it in {string.Join(" and ", settled.Where(phase => phase.IsBeyondLean)
                .Select(phase => phase.Phase.Name))}";
        var lean = Invariant($"of {1000 * fit.Study.Machine.Pilot.LeanMetres:0} mm");
        return string.Join(" and ", settled.Where(phase => phase[PhaseQuantity.Effort] >= (1 - AsHard) * most)
            .Select(phase => Invariant($"{phase.Phase.Name}: lean {Math.Abs(phase[PhaseQuantity.Lean]):0} {lean} to the ")
                + SideText.Side(phase[PhaseQuantity.Lean])));
    }

    /// <summary>What keeps the frame from them that would otherwise serve them best.</summary>
    private static string Kept(CustomerFit fit)
    {
        var own = fit.Own?.Cost ?? double.PositiveInfinity;
        var better = fit.Frames.Where(frame => frame is { IsForRotation: true, Broken.Count: > 0 } && frame.Cost < own)
            .OrderBy(frame => frame.Cost).FirstOrDefault();
        return better is null ? "" : $"; the limit {StudyText.LimitTitle(better.Broken[0])} keeps {better.Geometry.Name} from them";
    }
}
