namespace FrameOpt.ProductLine.PMedian;

/// <summary>The incumbent: the best choice of columns so far, and the cutoff for further choices.</summary>
internal sealed class Incumbent
{
    /// <summary>Smallest relative improvement of a better choice; well below the optimality gap.</summary>
    private const double Tolerance = 1e-10;

    private readonly PMedianProblem problem;
    private readonly double cutoff;
    private readonly double enough;

    /// <param name="problem">The problem.</param>
    /// <param name="start">A first choice.</param>
    /// <param name="cutoff">Only choices below this matter.</param>
    /// <param name="enough">When finite, the problem is a feasibility question: the first choice with a value of at most this ends the
    /// search.</param>
    public Incumbent(PMedianProblem problem, int[] start, double cutoff, double enough)
    {
        (this.problem, this.cutoff, this.enough) = (problem, cutoff, enough);
        (Chosen, Value) = (start, problem.Value(start));
    }

    public int[] Chosen { get; private set; }

    public double Value { get; private set; }

    /// <summary>The value that bounds are driven towards.</summary>
    public double Target => Math.Min(Value, cutoff);

    /// <summary>Cutoff value: subproblems whose bound reaches it are pruned.</summary>
    public double Cutoff => Math.Min(Target * (1 - Tolerance), Math.BitIncrement(enough));

    /// <summary>True for a feasibility question.</summary>
    public bool IsFeasibilityQuestion => double.IsFinite(enough);

    /// <summary>True when the feasibility question is answered with yes.</summary>
    public bool TargetMet => IsFeasibilityQuestion && Value <= enough;

    public void TryImprove(int[] columns)
    {
        var sum = problem.Value(columns);
        if (sum < Value)
            (Chosen, Value) = ([.. columns.Order()], sum);
    }
}
