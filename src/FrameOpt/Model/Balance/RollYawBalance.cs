using FrameOpt.Numerics;

namespace FrameOpt.Model.Balance;

/// <summary>What the risers hold at one spacing and what reaches the wing, each linear in the lateral offset.</summary>
/// <param name="BodyRoll">phi, rad, right side down +.</param>
/// <param name="BodyYaw">psi_b, rad, nose right +.</param>
/// <param name="WingBank">Phi, rad, right +.</param>
/// <param name="WingRollMoment">M_w, N·m.</param>
/// <param name="WingYawMoment">N_w, N·m.</param>
/// <param name="Residual">R, N·m, turns right +.</param>
/// <param name="PendulumShare">kappa: change of the residual for each N·m of roll moment on the body.</param>
/// <param name="YawStiffness">K_psi, N·m/rad.</param>
/// <param name="Failure">Why there is no stable balance, or none.</param>
public readonly record struct RollYawBalance(
    LinearFunction BodyRoll,
    LinearFunction BodyYaw,
    LinearFunction WingBank,
    LinearFunction WingRollMoment,
    LinearFunction WingYawMoment,
    LinearFunction Residual,
    double PendulumShare,
    double YawStiffness,
    FailureKind Failure)
{
    /// <summary>Solves the 3 x 3 system of roll, yaw and bank.</summary>
    /// <param name="body">Pitch, riser load, moments, and how the wing banks and answers.</param>
    /// <param name="rollMetres">Roll stiffness over riser load, c_phi at the spacing.</param>
    /// <param name="yawMetres">Yaw stiffness over riser load at the spacing.</param>
    /// <param name="rest">Roll and twist at which the risers hold no moment.</param>
    /// <remarks>Source: statics, small angles; with no thrust, drag and lean it is the minimum of the energy
    /// (K_phi (phi - phi_0 - Phi)² + W Z_c phi²) / 2, so that M_w = (R0 - W Z_c phi_0) K_phi / (K_phi + W Z_c).</remarks>
    public static RollYawBalance Of(in SuspendedBody body, double rollMetres, double yawMetres, in RestAttitude rest)
    {
        if (double.IsNaN(rollMetres))
            return new RollYawBalance { Failure = FailureKind.SpacingBeyondLines };
        double Kphi = body.Load.Newtons * rollMetres, Kpsi = body.Load.Newtons * yawMetres;
        double sin = body.Load.LeanSine, cos = body.Load.LeanCosine;
        var stiffness = body.Stiffness;

        // The third row gives the bank: Phi = alpha phi + beta psi_b + gamma.
        double alpha = body.Bank.PerRoll, beta = body.Bank.PerYaw, gamma = body.Bank.AtZeroAttitude;

        // Roll and twist against the wing from rest: a = aPhi phi + aPsi psi_b - gamma - rest, k = sin phi + cos psi_b - rest.
        double aPhi = cos - alpha, aPsi = -sin - beta;
        var m11 = stiffness.PendulumNewtonMetres + Kphi * cos * aPhi + Kpsi * sin * sin;
        var m12 = stiffness.DragDownNewtonMetres + Kphi * cos * aPsi + Kpsi * sin * cos;
        var m21 = stiffness.DragDownNewtonMetres - stiffness.ThrustPitchNewtonMetres - Kphi * sin * aPhi + Kpsi * cos * sin;
        var m22 = -stiffness.DragForwardNewtonMetres - Kphi * sin * aPsi + Kpsi * cos * cos;
        var determinant = m11 * m22 - m12 * m21;
        if (!(determinant > 0))
            return new RollYawBalance { Failure = FailureKind.Unstable };

        // Cramer's rule for phi and psi_b, linear in the offset because the moments are.
        var inverse = 1 / determinant;
        double restRoll = Kphi * rest.Roll, restTwist = Kpsi * rest.Twist;
        LinearFunction r = body.Moments.Roll + Kphi * cos * gamma + (cos * restRoll + sin * restTwist);
        LinearFunction n = body.Moments.Yaw - Kphi * sin * gamma + (cos * restTwist - sin * restRoll);
        LinearFunction phi = inverse * (m22 * r - m12 * n), psi = inverse * (m11 * n - m21 * r);

        // kappa: the same system with a roll moment of one on the right and nothing else.
        double phiOne = m22 * inverse, psiOne = -m21 * inverse;
        var kappa = Kphi * (aPhi * phiOne + aPsi * psiOne) + body.Wing.Yaw * (Kpsi * (sin * phiOne + cos * psiOne))
            + body.Wing.BankNewtonMetres * (alpha * phiOne + beta * psiOne);
        var bank = alpha * phi + beta * psi + gamma;
        LinearFunction Mw = Kphi * (aPhi * phi + aPsi * psi - gamma - rest.Roll), Nw = Kpsi * (sin * phi + cos * psi - rest.Twist);
        return new RollYawBalance(
            phi,
            psi,
            bank,
            Mw,
            Nw,
            body.Wing.Residual(Mw, Nw, bank),
            kappa,
            Kpsi,
            FailureKind.None);
    }
}
