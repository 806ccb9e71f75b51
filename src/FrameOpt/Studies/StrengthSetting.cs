namespace FrameOpt.Studies;

/// <summary>What the hang-point load and arm moment are reckoned for. Figures only: strength is for certified tests.</summary>
/// <param name="LimitLoadFactor">Times the steady load.</param>
/// <param name="OverhangMetres">From the frame to the hang point.</param>
public sealed record StrengthSetting(double LimitLoadFactor, double OverhangMetres);
