using FrameOpt.Model;

namespace FrameOpt.Studies;

/// <summary>The same study at another yaw leverage, the least certain number of the model.</summary>
/// <param name="Label">"0.2", "1.6", or "as in the study" with where its value comes from.</param>
/// <param name="Chosen">The run's best compromise, evaluated at this leverage.</param>
/// <param name="Best">The design that would have been best at this leverage, or null when nothing is feasible or its search was not run to the end.</param>
/// <param name="BestEvaluation">That design at this leverage.</param>
public sealed record LeverageScenario(
    string Label,
    DesignEvaluation Chosen,
    FrontDesign? Best,
    DesignEvaluation? BestEvaluation);
