namespace FrameOpt.Fit;

/// <summary>Readings that fit far better with their sides changed over: a sign convention that is not that of the form.</summary>
/// <param name="What">Which sides, in words: "left and right of the leans".</param>
/// <param name="Misfit">Root mean square misfit as read.</param>
/// <param name="MisfitChangedOver">The same with the sides changed over.</param>
public sealed record SignSuspicion(string What, double Misfit, double MisfitChangedOver)
{
    /// <summary>By so much the cost must fall: as read, the data are then exp(10) times less likely.</summary>
    private const double Convincing = 20;

    /// <summary>Costs this near are alike: the one that changes less is named.</summary>
    private const double Alike = 4;

    private static readonly (string What, ReadingKind[] Kinds)[] conventions =
    [
        ("left and right of the two scales", [ReadingKind.LeftScale]),
        ("forward and back of the hang angle", [ReadingKind.HangAngle]),
        ("up and down of the climb", [ReadingKind.Climb]),
        ("left and right of the bar tilt, or the side of the lead", [ReadingKind.BarTilt]),
        ("left and right of the leans", [ReadingKind.Lean]),
        ("left and right of the turns", [ReadingKind.Turn]),
        ("left and right of leans and turns", [ReadingKind.Lean, ReadingKind.Turn]),
        ("left and right in flight", [ReadingKind.Lean, ReadingKind.Turn, ReadingKind.BarTilt]),
        ("left and right everywhere", [ReadingKind.LeftScale, ReadingKind.Lean, ReadingKind.Turn, ReadingKind.BarTilt]),
    ];

    /// <summary>The change of sides that explains the readings best, or null when they are right as they stand.</summary>
    public static SignSuspicion? Of(MeasuredFit fit)
    {
        var read = fit.Readings.Select(reading => reading.Kind).ToHashSet();
        (string What, MeasuredFit Fit)? best = null;
        foreach (var (what, kinds) in conventions.Where(convention => convention.Kinds.All(read.Contains)))
        {
            var other = MeasuredFit.Of(fit.Study, [.. fit.Runs.Select(run => ChangedOver(run, kinds))]);
            if (other.Least.Cost < (best is { } found ? found.Fit.Least.Cost - Alike : fit.Least.Cost - Convincing))
                best = (what, other);
        }

        return best is not { } wrong ? null
            : new SignSuspicion(wrong.What, fit.Misfit(reading => reading.After), wrong.Fit.Misfit(reading => reading.After));
    }

    private static MeasuredRun ChangedOver(MeasuredRun run, ReadingKind[] kinds) => run with
    {
        Readings = [.. run.Readings.Select(reading => kinds.Contains(ReadingKind.LeftScale) && run is MeasuredRun.Hang
            ? (reading.Kind == ReadingKind.LeftScale ? ReadingKind.RightScale : ReadingKind.LeftScale, reading.Value)
            : kinds.Contains(reading.Kind) ? (reading.Kind, -reading.Value) : reading)],
    };
}
