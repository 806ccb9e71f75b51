using CsCheck;
using FrameOpt.ProductLine;

namespace FrameOpt.Tests.ProductLine;

/// <summary>Small random lines, and their best choice by trying all.</summary>
internal static class BruteForce
{
    private static readonly Gen<ProductLineObjective> objective = Gen.OneOf<ProductLineObjective>(
        Gen.Const((ProductLineObjective)new ProductLineObjective.Mean()),
        Gen.Const((ProductLineObjective)new ProductLineObjective.Worst()),
        Gen.Double[0.3, 1].Select(part => (ProductLineObjective)new ProductLineObjective.Percentile(part)),
        Gen.Double[0, 1].Select(weight => (ProductLineObjective)new ProductLineObjective.Blend(weight)));

    /// <summary>1 to 8 customers, 1 to 9 candidates, with ties, with pairs not allowed, with and without groups.</summary>
    public static Gen<ProductLineProblem> Problems { get; } =
        from customers in Gen.Int[1, 8]
        from candidates in Gen.Int[1, 9]
        from whole in Gen.Bool
        from forbidden in Gen.Int[0, 4]
        from costs in Gen.Select(Gen.Double[0, 10], Gen.Int[0, 9], (cost, dice) =>
            dice < forbidden ? double.PositiveInfinity : whole ? Math.Floor(cost) : cost).Array[candidates].Array[customers]
        from shares in Gen.Double[0.1, 5].Array[customers]
        from count in Gen.Int[1, 4]
        from of in objective
        from grouped in Gen.Bool
        from groups in Gen.Int[0, 2].Array[candidates]
        select new ProductLineProblem(costs, shares, count, of, grouped ? groups : null);

    /// <summary>The least value of all choices for the customers that can be served; infinite when some are always left out.</summary>
    public static double Best(ProductLineProblem problem)
    {
        int[] servable = [.. Enumerable.Range(0, problem.Costs.Length).Where(i => problem.Costs[i].Any(double.IsFinite))];
        double[] shares = [.. servable.Select(i => problem.Shares[i])];
        return servable.Length == 0 ? double.PositiveInfinity
            : Choices(problem).Min(choice => ObjectiveValue.Of(problem.Objective, shares,
                [.. servable.Select(i => choice.Min(j => problem.Costs[i][j]))]));
    }

    /// <summary>The fewest servable customers that a choice leaves out.</summary>
    public static int FewestLeftOut(ProductLineProblem problem) => Choices(problem).Min(choice =>
        problem.Costs.Count(row => row.Any(double.IsFinite) && choice.All(j => double.IsInfinity(row[j]))));

    public static IEnumerable<int[]> Choices(ProductLineProblem problem) =>
        Enumerable.Range(1, (1 << problem.Candidates) - 1)
            .Select(bits => Enumerable.Range(0, problem.Candidates).Where(j => (bits >> j & 1) == 1).ToArray())
            .Where(choice => choice.Length <= problem.Count && (problem.Groups is not { } groups
                || choice.All(j => groups[j] == groups[choice[0]])));
}
