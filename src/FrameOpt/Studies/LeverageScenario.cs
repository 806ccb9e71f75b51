using FrameOpt.Model;

namespace FrameOpt.Studies;

/// <summary>The same study at another yaw leverage, the least certain number of the model.</summary>
/// <param name="Label">"0.2", "as given", "as assumed (0.6)" or "1.6".</param>
/// <param name="Chosen">The run's best compromise, evaluated at this leverage.</param>
/// <param name="Best">The design that would have been best at this leverage, or null when nothing is feasible.</param>
/// <param name="BestEvaluation">That design at this leverage.</param>
public sealed record LeverageScenario(
    string Label,
    DesignEvaluation Chosen,
    FrontDesign? Best,
    DesignEvaluation? BestEvaluation);
