using FrameOpt.Plans;

namespace FrameOpt.Tests.Plans;

/// <summary>Factors named by their letters, and the columns of a plan.</summary>
internal static class PlanNames
{
    public static string[] Letters(int count) => [.. EffectWord.Letters.Take(count).Select(letter => letter.ToString())];

    public static double[] Column(this Plan plan, int factor) => [.. plan.Runs.Select(run => run.Coded[factor])];

    public static double[] Column(this Plan plan, EffectWord effect) => [.. plan.Runs.Select(run => effect.At(run.Coded))];

    public static double Dot(double[] left, double[] right) => left.Zip(right, (a, b) => a * b).Sum();

    public static string Signs(this PlanRun run) => string.Concat(run.Coded.Select(value => value > 0 ? '+' : value < 0 ? '-' : '0'));
}
