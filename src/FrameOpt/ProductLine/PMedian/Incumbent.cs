namespace FrameOpt.ProductLine.PMedian;

/// <summary>The best choice of columns so far, and what a choice must stay below to be of use.</summary>
internal sealed class Incumbent
{
    /// <summary>What a better choice must gain at least, as a part of the value; well below what counts as proven.</summary>
    private const double Tolerance = 1e-10;

    private readonly PMedianProblem problem;
    private readonly double cutoff;
    private readonly double enough;

    /// <param name="problem">What is being solved.</param>
    /// <param name="start">A first choice.</param>
    /// <param name="cutoff">Only choices below this matter.</param>
    /// <param name="enough">When finite, only choices at or below this matter and the first one ends the search: a question of yes or
    /// no.</param>
    public Incumbent(PMedianProblem problem, int[] start, double cutoff, double enough)
    {
        (this.problem, this.cutoff, this.enough) = (problem, cutoff, enough);
        (Chosen, Value) = (start, problem.Value(start));
    }

    public int[] Chosen { get; private set; }

    public double Value { get; private set; }

    /// <summary>What bounds are driven towards.</summary>
    public double Target => Math.Min(Value, cutoff);

    /// <summary>A choice not below this is of no use.</summary>
    public double Cutoff => Math.Min(Target * (1 - Tolerance), Math.BitIncrement(enough));

    /// <summary>Whether it is a question of yes or no.</summary>
    public bool IsFeasibilityQuestion => double.IsFinite(enough);

    /// <summary>Whether the question of yes or no is answered with yes.</summary>
    public bool TargetMet => IsFeasibilityQuestion && Value <= enough;

    public void TryImprove(int[] columns)
    {
        var sum = problem.Value(columns);
        if (sum < Value)
            (Chosen, Value) = ([.. columns.Order()], sum);
    }
}
