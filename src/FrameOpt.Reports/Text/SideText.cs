using FrameOpt.Model.Mission;

namespace FrameOpt.Reports.Text;

/// <summary>Signs in words: positive in the model is to the right.</summary>
public static class SideText
{
    /// <summary>"right" for +, "left" for -.</summary>
    public static string Side(double value) => value < 0 ? "left" : "right";

    /// <summary>A residual torque and what it does: "6.1 N·m, steers right".</summary>
    public static string Residual(PhaseResult phase) => Residual(phase[PhaseQuantity.Residual]);

    /// <summary>The same for a torque given as a number.</summary>
    public static string Residual(double newtonMetres)
    {
        var size = NumberFormat.Meant(Math.Abs(newtonMetres), "N·m");
        var steers = PhaseResult.SteersWith(newtonMetres);
        return steers == "straight" ? $"{size}, hardly any pull: the wing's own trim decides" : $"{size}, steers {steers}";
    }

    /// <summary>A moment or a residual without the verb: "3.7 N·m right".</summary>
    public static string Moment(double newtonMetres)
    {
        var size = NumberFormat.Text(Math.Abs(newtonMetres), "N·m");
        return Math.Abs(newtonMetres) < 0.05 ? size : $"{size} {Side(newtonMetres)}";
    }

    /// <summary>The lean that cancels it: "lean 5.6 mm to the left".</summary>
    public static string Lean(double millimetres) => double.IsInfinity(millimetres) ? "no lean cures it"
        : Math.Abs(millimetres) < 0.5 ? "no lean"
        : $"lean {NumberFormat.Meant(Math.Abs(millimetres), "mm")} to the {Side(millimetres)}";

    /// <summary>The lean and what it takes of the pilot: "lean 5.6 mm to the left; effort 0.07 of the largest lean"; where no lean cures
    /// the turn, that.</summary>
    public static string LeanAndEffort(PhaseResult phase) => phase.IsBeyondLean
        ? $"NO LEAN CURES IT: less than a fifth of a weight shift reaches the wing (pendulum share "
            + $"{NumberFormat.SignificantDigits(phase[PhaseQuantity.PendulumShare], 3)})"
        : $"{Lean(phase[PhaseQuantity.Lean])}; effort {NumberFormat.Text(phase[PhaseQuantity.Effort], "")} of the largest lean"
            + (phase.CannotBeHeld ? " (CANNOT BE HELD)" : "");

    /// <summary>The effort in brackets, for a list of phases: "climb (effort 1.20)", "climb (no lean cures it)".</summary>
    public static string EffortOf(PhaseResult phase) => phase.IsBeyondLean
        ? $"{phase.Phase.Name} (no lean cures it)"
        : $"{phase.Phase.Name} (effort {NumberFormat.Text(phase[PhaseQuantity.Effort], "")})";

    /// <summary>The twist of the risers: "risers twisted 12.1 deg, nose right (twist margin 4.75)".</summary>
    public static string Twist(PhaseResult phase) => Math.Abs(phase.TwistDegrees) < 0.05
        ? "risers not twisted"
        : $"risers twisted {NumberFormat.Text(Math.Abs(phase.TwistDegrees), "deg")}, nose {Side(phase.TwistDegrees)} "
            + $"(twist margin {NumberFormat.Text(phase[PhaseQuantity.TwistMargin], "")})";

    /// <summary>Which riser carries more: "right riser carries 36 N (3.7 kgf) more".</summary>
    public static string LoadDifference(double newtons) => Math.Abs(newtons) < 0.5
        ? "both risers carry the same load"
        : $"{Side(newtons)} riser carries {NumberFormat.Load(Math.Abs(newtons))} more";
}
