using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>The decision of a study on a line, and what this run says of it.</summary>
internal static class LineDecision
{
    public static IEnumerable<AnswerSection> Of(ProductLineResult result) => DecisionSection.Of(result.Study, Changes(result));

    private static IEnumerable<string> Changes(ProductLineResult result)
    {
        if (result.Decided is not { } decided)
            yield break;
        var setting = result.Setting;
        var others = result.Geometries.Select(geometry => geometry.Name).Except(result.Study.Decision!.Geometries).ToList();
        if (decided.Unserved > 0)
            yield return $"THE GEOMETRIES DECIDED ON LEAVE UNSERVED {ProductLineText.Pieces(setting, decided.Unserved)} with this study.";
        else if (others.Count > 0)
            yield return $"The geometries decided on, alone: {ProductLineText.Value(setting)} "
                + $"{ProductLineText.Amount(setting, decided.Value)}; with {string.Join(", ", others)} beside them "
                + $"{ProductLineText.Amount(setting, result.Solution.Value)}.";
        else
            yield return $"They are the line of this run: {ProductLineText.Value(setting)} "
                + $"{ProductLineText.Amount(setting, decided.Value)}.";
        if (others.Count == 0 && LineHelp.HelpedByOneMore(result) is > 0 and var helped)
            yield return $"One more geometry would help {ProductLineText.Pieces(setting, helped)} noticeably.";
    }
}
