using System.Xml.Linq;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Graphics;
using FrameOpt.Running;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Page;

/// <summary>Which factors matter to each response in the model itself, drawn.</summary>
public static class ModelSharesPictures
{
    /// <summary>For the responses of the study's plan, or else for its objectives; none where there is nothing to choose, and for pairs of
    /// holes, which are no factors of their own.</summary>
    /// <param name="result">A run.</param>
    public static IEnumerable<XElement> Of(StudyResult result)
    {
        var shares = result.Plan?.Shares ?? OfObjectives(result);
        return shares is null ? [] : shares.Responses.Index().Where(one => one.Item.Everywhere.Count > 0)
            .Select(one => ModelSharesBars.Of($"shares-{one.Index + 1}", shares, one.Item));
    }

    private static ModelShares? OfObjectives(StudyResult result)
    {
        var study = result.Study;
        IReadOnlyList<Response> responses =
            [.. study.Objectives.Select(objective => objective.Response).Where(response => !response.IsOverCases).Distinct()];
        return responses.Count == 0 || study.Holes is not null || study.Factors.Count(factor => factor.IsSwept) < 2 ? null
            : ModelSharesRun.Of(study, result.Mission, responses, threads: 1);
    }
}
