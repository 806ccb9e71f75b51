using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;

namespace FrameOpt.Tests.Reliability;

/// <summary>The promise on numbers: a design has finite figures, or a figure documented as without bound, or a reason in words.</summary>
internal static class Sound
{
    /// <summary>What may be without bound, and why docs/model.md says so: no lean cures, no yaw moment twists, no torque is
    /// needed.</summary>
    private static readonly ResponseEntry[] maybeUnbounded =
    [
        PhaseQuantity.Lean, PhaseQuantity.Effort, MissionQuantity.EffortWorst, PhaseQuantity.TwistMargin, MissionQuantity.TwistMarginWorst,
        PhaseQuantity.TorqueMargin, MissionQuantity.TorqueMarginWorst,
    ];

    /// <summary>Fails unless the promise is kept.</summary>
    /// <param name="design">Of any study.</param>
    /// <param name="references">What the study gives of what some responses need.</param>
    public static void Check(DesignEvaluation design, ResponseReferences references)
    {
        if (design.Failure is { } failure)
        {
            var words = FailureText.Describe(failure);
            BrokenPromise.Unless(words.Length > 0 && !words.Contains("NaN"), "a failure without its figures", words);
            return;
        }

        foreach (var phase in design.Phases)
        {
            foreach (var quantity in ResponseCatalogue.OfPhases)
                Check(quantity, phase[quantity], $"{quantity} in {phase.Phase.Name}", references);
        }

        foreach (var quantity in ResponseCatalogue.OfMissions)
            Check(quantity, design[quantity], quantity.Name, references);
    }

    private static void Check(ResponseEntry entry, double value, string what, ResponseReferences references)
    {
        var isMissing = entry.Needs == ResponseNeed.Strength && references.LimitLoadFactor is null
            || entry.Needs == ResponseNeed.Baseline && references.Baseline is null;
        var isRight = double.IsFinite(value) || double.IsNaN(value) && isMissing
            || double.IsPositiveInfinity(value) && maybeUnbounded.Contains(entry);
        BrokenPromise.Unless(isRight, $"{entry.Name} is no number", $"{what} is {value:R}");
    }
}
