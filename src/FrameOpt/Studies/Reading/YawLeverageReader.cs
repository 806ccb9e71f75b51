using FrameOpt.Model;

namespace FrameOpt.Studies.Reading;

/// <summary>Reads how a wing turns: two coefficients, or the leverage itself, or neither.</summary>
internal static class YawLeverageReader
{
    private const double GenericRollRestoring = 0.05;

    /// <summary>The roll restoring coefficient and the yaw leverage.</summary>
    public static (double RollRestoring, YawLeverage Leverage) Read(Section wing)
    {
        var restoring = wing.Optional("roll_restoring", Dimension.Number, Bound.Above0(2, "2"));
        var damping = wing.Optional("yaw_damping", Dimension.Number, Bound.Above0(2, "2"));
        var leverage = wing.Optional("yaw_leverage", Dimension.Number, Bound.From0(10, "10"));
        if (leverage is not null && damping is not null)
            wing.Findings.Mistake(wing.At("yaw_leverage"), "wing gives both yaw_leverage and yaw_damping.", "Keep `yaw_leverage`, or `roll_restoring` and `yaw_damping`.");
        if (leverage is null && restoring is null != damping is null)
        {
            var (given, other) = damping is null ? ("roll_restoring", "yaw_damping: 0.07") : ("yaw_damping", "roll_restoring: 0.05");
            wing.Findings.Mistake(wing.At(given), $"wing.{given} stands alone.", $"Add `{other}` to it, or give `yaw_leverage` in place of both.");
        }

        if (restoring is null)
            wing.Findings.Assume("roll restoring coefficient, for the indicative turn rate only", "0.05 per radian", "Toglia and Vendittelli 2010, Table 2 (generic)");
        return (restoring ?? GenericRollRestoring, Leverage(wing, restoring, damping, leverage));
    }

    private static YawLeverage Leverage(Section wing, double? restoring, double? damping, double? leverage)
    {
        if (leverage is { } given)
            return new YawLeverage.Constant(given);
        if (restoring is { } roll && damping is { } yaw)
            return new YawLeverage.FromCoefficients(roll, yaw);
        wing.Findings.Assume("yaw leverage", FormattableString.Invariant($"{YawLeverage.Assumed}"),
            FormattableString.Invariant($"assumption, range {YawLeverage.AssumedLowest} to {YawLeverage.AssumedHighest}"));
        return new YawLeverage.Constant(YawLeverage.Assumed);
    }
}
