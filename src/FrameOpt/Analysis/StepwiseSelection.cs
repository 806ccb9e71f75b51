using FrameOpt.Numerics;
using FrameOpt.Plans;

namespace FrameOpt.Analysis;

/// <summary>Chooses the terms of a model one step at a time.</summary>
public static class StepwiseSelection
{
    /// <summary>From the constant alone, the term is added or dropped that lowers the corrected Akaike criterion most, until none
    /// does.</summary>
    /// <param name="candidates">A hierarchical set; a term enters together with those it contains and leaves before
    /// them.</param>
    /// <param name="x">The factors of each run.</param>
    /// <param name="y">The response of each run.</param>
    /// <param name="errors">Whether the runs were measured or computed.</param>
    /// <param name="isKept">Terms that are in from the start and stay, such as blocks; the constant always does.</param>
    /// <returns>The fit of the terms chosen, in the order of the candidates.</returns>
    /// <exception cref="ArgumentException">The candidates are not hierarchical.</exception>
    /// <remarks>p-values of a fit chosen like this are too small: the runs chose the terms they test.</remarks>
    public static RegressionFit Fit(IReadOnlyList<ModelTerm> candidates, IReadOnlyList<double[]> x, IReadOnlyList<double> y,
        ErrorKind errors, Func<ModelTerm, bool>? isKept = null)
    {
        bool Stays(ModelTerm term) => term.Order == 0 || (isKept?.Invoke(term) ?? false);
        if (ModelTerms.Missing(candidates) is [var missing, ..])
            throw new ArgumentException($"the candidates lack {missing.Name}", nameof(candidates));
        var chosen = candidates.Where(Stays).ToHashSet();
        var score = Score(candidates, chosen, x, y);
        while (true)
        {
            var best = candidates.Where(term => !Stays(term) && MayChange(term, chosen))
                .Select(term => (Term: term, Score: Score(candidates, Changed(chosen, term), x, y)))
                .MinBy(step => step.Score);
            if (best.Term is null || best.Score.CompareTo(score) >= 0)
                return Regression.Fit([.. candidates.Where(chosen.Contains)], x, y, errors);
            (chosen, score) = (Changed(chosen, best.Term), best.Score);
        }
    }

    private static bool MayChange(ModelTerm term, HashSet<ModelTerm> chosen) =>
        !chosen.Contains(term) || !chosen.Any(other => other.Contains(term));

    private static HashSet<ModelTerm> Changed(HashSet<ModelTerm> chosen, ModelTerm term)
    {
        HashSet<ModelTerm> changed = [.. chosen];
        if (!changed.Remove(term))
            changed.UnionWith([term, .. ModelTerms.Missing([.. chosen, term])]);
        return changed;
    }

    /// <summary>The criterion, and for equal ones the number of terms; an aliased term never lowers it.</summary>
    private static (double Criterion, int Terms) Score(
        IReadOnlyList<ModelTerm> candidates, HashSet<ModelTerm> chosen, IReadOnlyList<double[]> x,
        IReadOnlyList<double> y)
    {
        var columns = new OrthogonalColumns(candidates.Where(chosen.Contains).Select(term => x.Select(term.Value).ToArray()));
        var rest = columns.Project(y).Residual;
        return (Aicc.Of(y.Count, chosen.Count, rest.Sum(value => value * value)), chosen.Count);
    }
}

/// <summary>The corrected Akaike criterion: goodness of fit with a penalty for the number of terms.</summary>
public static class Aicc
{
    /// <summary>n ln(S/n) + 2k + 2k(k+1)/(n-k-1), k the terms and the error: smaller is better.</summary>
    /// <returns>Minus infinity for an exact fit with degrees of freedom left; infinity where the runs are too few to judge.</returns>
    /// <remarks>Source: C. M. Hurvich and C.-L. Tsai 1989, Regression and time series model selection in small samples (from memory). For
    /// computed runs it is a rule for short models, not a likelihood.</remarks>
    public static double Of(int runs, int terms, double residualSumOfSquares)
    {
        var parameters = terms + 1;
        if (runs - parameters - 1 <= 0)
            return double.PositiveInfinity;
        return (runs * Elementary.Log(residualSumOfSquares / runs)) + (2 * parameters)
            + (2.0 * parameters * (parameters + 1) / (runs - parameters - 1));
    }
}
