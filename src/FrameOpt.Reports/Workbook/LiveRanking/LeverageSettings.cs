using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Workbook.LiveRanking;

/// <summary>The yaw leverages a user may switch between in the workbook.</summary>
internal static class LeverageSettings
{
    /// <summary>Of <see cref="Labels"/>, from 0: the study's own.</summary>
    public const int AsInStudy = 1;

    /// <summary>What stands in the list, in order.</summary>
    public static IReadOnlyList<string> Labels { get; } = [
        Label(YawLeverage.AssumedLowest), "as in the study", Label(YawLeverage.AssumedHighest)];

    /// <summary>The model at each of them.</summary>
    public static IReadOnlyList<MissionModel> Models(MissionModel study) =>
        [study.WithYawLeverage(YawLeverage.AssumedLowest), study, study.WithYawLeverage(YawLeverage.AssumedHighest)];

    private static string Label(double leverage) => $"leverage {PlainNumber.Text(leverage)}";
}
