using FrameOpt.Analysis;

namespace FrameOpt.Tests.Analysis;

public class VarianceSharesTests
{
    private const string Quadrature = "a grid of midpoints stands for a uniform distribution";

    // T. Ishigami and T. Homma 1990, a = 7, b = 0.1, uniform over -pi to pi; closed form of the indices from memory, as in many textbooks.
    // Shapley: what x1 and x3 do together, 0.2437, is divided evenly.
    [Fact]
    public void The_Ishigami_function_has_its_known_indices()
    {
        const int n = 60;
        var shares = Of(3, n, at =>
        {
            var x = at.Select(level => -Math.PI + 2 * Math.PI * (level + 0.5) / n).ToArray();
            return Math.Sin(x[0]) + 7 * Math.Pow(Math.Sin(x[1]), 2) + 0.1 * Math.Pow(x[2], 4) * Math.Sin(x[0]);
        });
        double[] alone = [0.313905191148, 0.442411144790, 0], total = [0.557588855210, 0.442411144790, 0.243683664062];
        for (var f = 0; f < 3; f++)
        {
            Check.Close(alone[f], shares[f].Alone, absolute: 1e-3, because: Quadrature);
            Check.Close(total[f], shares[f].Total, absolute: 1e-3, because: Quadrature);
            Check.Close((alone[f] + total[f]) / 2, shares[f].Shapley, absolute: 1e-3, because: Quadrature);
        }
    }

    // I. M. Sobol', g-function with a = (0, 1, 4.5): V_i = 1 / (3 (1 + a_i)^2), V = product of (1 + V_i) - 1 (from memory).
    [Fact]
    public void The_g_function_has_its_known_indices()
    {
        const int n = 60;
        double[] a = [0, 1, 4.5];
        var shares = Of(3, n, at => a.Select((ai, i) => (Math.Abs(4 * (at[i] + 0.5) / n - 2) + ai) / (1 + ai))
            .Aggregate(1.0, (product, g) => product * g));
        var parts = a.Select(ai => 1 / (3 * (1 + ai) * (1 + ai))).ToArray();
        var whole = parts.Aggregate(1.0, (product, part) => product * (1 + part)) - 1;
        for (var f = 0; f < 3; f++)
        {
            Check.Close(parts[f] / whole, shares[f].Alone, absolute: 1e-3, because: Quadrature);
            var others = parts.Where((_, i) => i != f).Aggregate(1.0, (product, part) => product * (1 + part));
            Check.Close(parts[f] * others / whole, shares[f].Total, absolute: 1e-3, because: Quadrature);
        }

        Check.Close(1, shares.Sum(share => share.Shapley), absolute: 1e-12, because: "the effects add up to the variance");
    }

    // By hand: y = 3 a + b over two levels each has variances 9/4 and 1/4.
    [Fact]
    public void A_sum_has_the_variances_of_its_parts()
    {
        var shares = Of(2, 2, at => 3 * at[0] + at[1]);
        Assert.Equal([0.9, 0.1], shares.Select(share => Math.Round(share.Shapley, 12)));
        Assert.Equal([0.9, 0.1], shares.Select(share => Math.Round(share.Total, 12)));
    }

    // By hand: of the designs (0,0), (0,1), (1,0) only the first has y = 0. Both factors are alike, so each has half.
    [Fact]
    public void In_a_part_of_a_grid_the_effects_still_add_up()
    {
        var shares = VarianceShares.Of([[0, 0, 1], [0, 1, 0]], [[0.0, 1, 1]])[0];
        Assert.All(shares, share => Check.Close(0.5, share.Shapley, absolute: 1e-12, because: "both factors are alike"));
        // Means at the levels of a factor: 1/2 (two designs) and 1 (one); their variance is 1/18, that of y is 2/9.
        Assert.All(shares, share => Check.Close(0.25, share.Alone, absolute: 1e-12, because: "a fraction by hand"));
    }

    [Fact]
    public void A_response_that_never_changes_has_no_shares() => Assert.Empty(Of(2, 3, _ => 5));

    private static IReadOnlyList<FactorShare> Of(int factors, int n, Func<int[], double> function)
    {
        var designs = Enumerable.Range(0, (int)Math.Pow(n, factors))
            .Select(i => Enumerable.Range(0, factors).Select(f => i / (int)Math.Pow(n, f) % n).ToArray()).ToList();
        return VarianceShares.Of(
            [.. Enumerable.Range(0, factors).Select(f => designs.Select(at => at[f]).ToArray())], [[.. designs.Select(function)]])[0];
    }
}
