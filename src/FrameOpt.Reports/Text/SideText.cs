using FrameOpt.Model.Mission;

namespace FrameOpt.Reports.Text;

/// <summary>Signs in words: positive in the model is to the right.</summary>
public static class SideText
{
    /// <summary>"right" for +, "left" for -.</summary>
    public static string Side(double value) => value < 0 ? "left" : "right";

    /// <summary>A residual torque and what it does: "3.7 N·m, steers right".</summary>
    public static string Residual(PhaseResult phase) => Residual(phase[PhaseQuantity.Residual]);

    /// <summary>The same for a torque given as a number.</summary>
    public static string Residual(double newtonMetres)
    {
        var size = NumberFormat.Text(Math.Abs(newtonMetres), "N·m");
        var steers = PhaseResult.SteersWith(newtonMetres);
        return steers == "straight" ? $"{size}, flies straight" : $"{size}, steers {steers}";
    }

    /// <summary>A moment or a residual without the verb: "3.7 N·m right".</summary>
    public static string Moment(double newtonMetres)
    {
        var size = NumberFormat.Text(Math.Abs(newtonMetres), "N·m");
        return Math.Abs(newtonMetres) < 0.05 ? size : $"{size} {Side(newtonMetres)}";
    }

    /// <summary>The lean that cancels it: "lean 5.6 mm to the left".</summary>
    public static string Lean(double millimetres) => Math.Abs(millimetres) < 0.05
        ? "no lean"
        : $"lean {NumberFormat.Text(Math.Abs(millimetres), "mm")} to the {Side(millimetres)}";

    /// <summary>Which riser carries more: "right riser carries 36 N (3.7 kgf) more".</summary>
    public static string LoadDifference(double newtons) => Math.Abs(newtons) < 0.5
        ? "both risers carry the same load"
        : $"{Side(newtons)} riser carries {NumberFormat.Load(Math.Abs(newtons))} more";
}
