using System.Reflection;

namespace FrameOpt.Tests.Architecture;

/// <summary>What is shipped can be got to from the command line.</summary>
public class ReachableTypesTests
{
    private const string MeasuredPlans = "the analysis of measured plans, not yet reached by a command";

    /// <summary>Public types that no command reaches, by name, each with what needs it.</summary>
    private static readonly Dictionary<string, string> notReached = new()
    {
        ["CorrectedAkaike"] = MeasuredPlans,
        ["Desirability"] = MeasuredPlans,
        ["DesirabilityGoal"] = MeasuredPlans,
        ["DesirabilityOptimum"] = MeasuredPlans,
        ["DesirabilitySearch"] = MeasuredPlans,
        ["Effect"] = MeasuredPlans,
        ["EffectAlias"] = MeasuredPlans,
        ["Factor.Choice"] = "factors whose values have no order, such as one of several propellers; a study cannot state one yet",
        ["FactorCoding"] = MeasuredPlans,
        ["FactorialAnova"] = MeasuredPlans,
        ["Front"] = "the front of a list of points in one call; the runner builds its front batch by batch",
        ["HalfNormal"] = MeasuredPlans,
        ["HalfNormalPoint"] = MeasuredPlans,
        ["HaltonSequence"] = "space-filling plans, which a study cannot ask for yet",
        ["Indicators"] = "the tests that say how good a front is against a known one",
        ["Interval"] = MeasuredPlans,
        ["LenthMargins"] = MeasuredPlans,
        ["LineCurve"] = "the gain of each further variant in one call; the runner computes its points one by one",
        ["OneWayAnova"] = MeasuredPlans,
        ["PlanCorrelation"] = "correlations between terms of a plan, not yet shown in its report",
        ["Quantile"] = MeasuredPlans,
        ["SpaceFilling"] = "space-filling plans, which a study cannot ask for yet",
        ["StepwiseSelection"] = MeasuredPlans,
        ["TwoLevelEffects"] = MeasuredPlans,
    };

    [Fact]
    public void Every_public_type_is_reached_from_the_command_line_or_listed_here_with_its_reason()
    {
        var reached = Reachability.Types(Shipped.CommandLine.EntryPoint!);
        var unreached = Shipped.Types.Where(type => type.IsVisible && type.Assembly != Shipped.CommandLine)
            .Where(type => !reached.Contains(type) && !HoldsConstantsOnly(type)).Select(CSharpNames.Short).ToHashSet();
        var unlisted = unreached.Except(notReached.Keys).Order(StringComparer.Ordinal).ToArray();
        var stale = notReached.Keys.Except(unreached).ToArray();
        Assert.True(unlisted.Length == 0, $"{unlisted.Length} public types that nothing reaches:\n{string.Join('\n', unlisted)}");
        Assert.True(stale.Length == 0, $"listed as not reached, but reached or gone:\n{string.Join('\n', stale)}");
    }

    /// <summary>Constants are copied into the code that uses them; their type leaves no trace there.</summary>
    private static bool HoldsConstantsOnly(Type type) =>
        type is { IsAbstract: true, IsSealed: true }
        && type.GetMembers(Touched.Declared).All(member => member is FieldInfo { IsLiteral: true });
}
