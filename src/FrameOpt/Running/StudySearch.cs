using FrameOpt.Search;
using FrameOpt.Search.Evolution;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>The search a study asks for.</summary>
internal static class StudySearch
{
    /// <summary>The evolutionary search of a setting.</summary>
    /// <param name="study">Whose factors the setting's start has values for.</param>
    /// <param name="setting">Of the study.</param>
    /// <param name="problem">The study's, whose factors may stand in another order.</param>
    public static ISearch Of(Study study, SearchSetting.Evolutionary setting, Problem problem)
    {
        int[] places = [.. problem.Factors.Select(factor => study.Factors.ToList().FindIndex(other => other.Name == factor.Name))];
        var settings = new EvolutionSettings(setting.Population, setting.Seed)
        {
            Start = [.. Start(study, setting.Start).Select(design => Array.ConvertAll(places, place => design[place]))],
        };
        return setting.Method == SearchMethod.NsgaII ? new Nsga2Search(settings) : new Nsga3Search(settings);
    }

    /// <summary>The designs to start from: values in m or rad in the order of the study's factors.</summary>
    private static IEnumerable<IReadOnlyList<double>> Start(Study study, SearchStart? start) => start switch
    {
        SearchStart.FromFile file => file.Designs,
        SearchStart.FromPlan => StudyPlan.Of(study).Designs
            .Select(design => (IReadOnlyList<double>)[.. study.Factors.Select(factor => design[factor.Input])]),
        _ => [],
    };
}
