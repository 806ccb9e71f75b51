using FrameOpt.Numerics;

namespace FrameOpt.Model.Balance;

/// <summary>How a yaw moment and a bank count beside a roll moment in the condition of straight flight.</summary>
/// <param name="Yaw">Gamma, N·m of roll for each N·m of yaw moment at the hang points.</param>
/// <param name="BankNewtonMetres">n m_w g L, N·m for each radian by which the wing banks: its own weight on its arm.</param>
public readonly record struct WingLeverage(double Yaw, double BankNewtonMetres)
{
    /// <summary>Of a phase: Gamma = |Cl_beta|/Cn_beta - 0.34 eta min(q, q0) S b/(F b_top).</summary>
    /// <param name="conditions">Sideslip leverage, twisted wing and wing weight.</param>
    /// <param name="load">F.</param>
    /// <remarks>Source: <see cref="StraightFlight"/>.</remarks>
    public static WingLeverage Of(in PhaseConditions conditions, in RiserLoad load) =>
        new(conditions.SideslipLeverage - conditions.TwistedWingNewtons / load.Newtons, conditions.WingWeightNewtonMetres);

    /// <summary>R = M_w + Gamma N_w + n m_w g L Phi, turns right +: zero when one sideslip holds both the roll and the yaw
    /// moment.</summary>
    /// <remarks>Source: straight flight about the hang points, Cl_beta beta q S b + M_w + n m_w g L Phi = 0 and
    /// Cn_beta beta q S b + N_w = 0.</remarks>
    public LinearFunction Residual(LinearFunction rollMoment, LinearFunction yawMoment, LinearFunction bank) =>
        rollMoment + Yaw * yawMoment + BankNewtonMetres * bank;
}
