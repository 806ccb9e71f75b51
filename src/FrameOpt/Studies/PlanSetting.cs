using FrameOpt.Model.Mission;
using FrameOpt.Plans.Classical;
using FrameOpt.Plans.Optimal;

namespace FrameOpt.Studies;

/// <summary>A plan of runs over the swept factors, asked for by a study to learn which factors matter.</summary>
public abstract record PlanSetting
{
    private PlanSetting()
    {
    }

    /// <summary>The responses to analyse: the objectives, unless the study names others.</summary>
    public IReadOnlyList<Response> Responses { get; init; } = [];

    /// <summary>Every combination of levels.</summary>
    /// <param name="Levels">Of each factor, 2 or more.</param>
    public sealed record FullFactorial(int Levels) : PlanSetting;

    /// <summary>A two-level fraction of given generators, such as D=ABC.</summary>
    /// <param name="Generators">One for each factor beyond the basic ones.</param>
    public sealed record FractionWithGenerators(IReadOnlyList<string> Generators) : PlanSetting;

    /// <summary>The two-level fraction of least aberration in at most so many runs.</summary>
    public sealed record FractionWithMaxRuns(int Runs) : PlanSetting;

    /// <summary>A Plackett-Burman plan.</summary>
    /// <param name="Runs">Or null for the smallest that holds the factors.</param>
    public sealed record PlackettBurman(int? Runs) : PlanSetting;

    /// <summary>A central composite plan on a full cube.</summary>
    /// <param name="Axial">How far out the axial runs lie.</param>
    /// <param name="CentrePoints">At the middle.</param>
    public sealed record CentralComposite(AxialRule Axial, int CentrePoints) : PlanSetting;

    /// <summary>A Box-Behnken plan.</summary>
    /// <param name="CentrePoints">At the middle.</param>
    public sealed record BoxBehnken(int CentrePoints) : PlanSetting;

    /// <summary>A definitive screening plan.</summary>
    public sealed record DefinitiveScreening : PlanSetting;

    /// <summary>A D- or I-optimal plan.</summary>
    /// <param name="Criterion">What it is best at.</param>
    /// <param name="Model">linear, interactions or quadratic.</param>
    /// <param name="Runs">How many.</param>
    /// <param name="Seed">The same seed gives the same plan.</param>
    public sealed record Optimal(OptimalCriterion Criterion, SurfaceModel Model, int Runs, ulong Seed) : PlanSetting;
}

/// <summary>The terms of a fitted surface.</summary>
public enum SurfaceModel
{
    /// <summary>Each factor on its own.</summary>
    Linear,

    /// <summary>And every product of two.</summary>
    Interactions,

    /// <summary>Each factor and its square.</summary>
    LinearAndSquares,

    /// <summary>Each factor, every product of two, every square.</summary>
    Quadratic,
}
