using FrameOpt.Model;
using FrameOpt.Model.Mission;

namespace FrameOpt.Studies;

/// <summary>The wing as the study gives it, and the ways its least certain numbers may be wrong.</summary>
public enum WingCase
{
    /// <summary>The yaw leverage as low as it may be.</summary>
    LowLeverage,

    /// <summary>As the study gives it.</summary>
    AsGiven,

    /// <summary>The yaw leverage as high as it may be.</summary>
    HighLeverage,

    /// <summary>A canopy soft in bending: the risers hold little roll.</summary>
    SoftCoupling,

    /// <summary>A canopy stiff in bending: the risers hold much roll.</summary>
    StiffCoupling,
}

/// <summary>The wing of each case.</summary>
public static class WingCases
{
    /// <summary>All of them, in their order.</summary>
    public static IReadOnlyList<WingCase> All { get; } = Enum.GetValues<WingCase>();

    /// <summary>A study's wing in one of the cases.</summary>
    public static Wing Of(this WingCase wingCase, Wing given) => wingCase switch
    {
        WingCase.LowLeverage => given with { YawLeverage = given.YawLeverage.Low },
        WingCase.AsGiven => given,
        WingCase.HighLeverage => given with { YawLeverage = given.YawLeverage.High },
        WingCase.SoftCoupling => given with { RiserCoupling = RiserCoupling.Soft },
        WingCase.StiffCoupling => given with { RiserCoupling = RiserCoupling.Stiff },
        _ => throw new ArgumentOutOfRangeException(nameof(wingCase)),
    };
}

/// <summary>The same study with the wing of one case.</summary>
/// <param name="Case">Which.</param>
/// <param name="Chosen">The run's best compromise, evaluated under that wing.</param>
/// <param name="Best">The design that would have been best under that wing, or null when nothing is feasible there or the search for it
/// did not run to its end.</param>
/// <param name="BestEvaluation">That design under that wing.</param>
public sealed record WingScenario(WingCase Case, DesignEvaluation Chosen, FrontDesign? Best, DesignEvaluation? BestEvaluation);
