namespace FrameOpt.Search;

/// <summary>Results of a batch of designs: one array per objective and per constraint, one element per design. A search may reuse the
/// memory for a later batch, so copy what you need before asking for the next one.</summary>
public sealed class EvaluatedBatch
{
    /// <summary>Allocates the results of a batch.</summary>
    public EvaluatedBatch(Problem problem, DesignBatch designs)
    {
        Problem = problem;
        Designs = designs;
        Objectives = Columns(problem.Objectives.Count, designs.Count);
        ConstraintValues = Columns(problem.Constraints.Count, designs.Count);
        Failures = new ushort[designs.Count];
        Feasible = new byte[designs.Count];
    }

    /// <summary>The problem.</summary>
    public Problem Problem { get; }

    /// <summary>The designs.</summary>
    public DesignBatch Designs { get; set; }

    /// <summary>Each objective's values, oriented so that smaller is better; meaningless where a design failed.</summary>
    public double[][] Objectives { get; }

    /// <summary>Values of each constraint; meaningless where a design failed.</summary>
    public double[][] ConstraintValues { get; }

    /// <summary>0 for a design that succeeded, else the problem's code for the reason.</summary>
    public ushort[] Failures { get; }

    /// <summary>1 for a design that succeeded and satisfies every constraint.</summary>
    public byte[] Feasible { get; }

    /// <summary>Counts of this batch, set by <see cref="CheckConstraints"/>.</summary>
    public EvaluationCounts Counts { get; private set; } = new(0);

    /// <summary>Marks the feasible designs and counts the others by reason.</summary>
    public void CheckConstraints()
    {
        var counts = new EvaluationCounts(Problem.Constraints.Count) { Evaluated = Designs.Count };
        Counts = counts;
        if (ConstraintValues.Length == 0 && Failures.AsSpan(0, Designs.Count).IndexOfAnyExcept((ushort)0) < 0)
        {
            Feasible.AsSpan(0, Designs.Count).Fill(1);
            return;
        }

        for (var i = 0; i < Designs.Count; i++)
        {
            if (Failures[i] != 0)
            {
                Feasible[i] = 0;
                counts.AddFailure(Failures[i]);
                continue;
            }

            var misses = 0;
            var miss = 0.0;
            for (var b = 0; b < ConstraintValues.Length; b++)
            {
                var bound = Problem.Constraints[b];
                var value = ConstraintValues[b][i];
                if (bound.IsSatisfiedBy(value))
                    continue;
                misses++;
                miss += bound.Violation(value);
                counts.ViolatedBy[b]++;
            }

            Feasible[i] = misses == 0 ? (byte)1 : (byte)0;
            if (misses > 0)
                counts.AddInfeasible(Designs.FirstNumber + i, miss);
        }
    }

    private static double[][] Columns(int columns, int count)
    {
        var all = new double[columns][];
        for (var c = 0; c < columns; c++)
            all[c] = new double[count];
        return all;
    }
}

/// <summary>Designs in rows: within a row only one factor, the row factor, changes.</summary>
/// <param name="FirstNumber">Number of the first design; the rest follow it.</param>
/// <param name="RowCount">Number of rows.</param>
/// <param name="Rows">Row by row the value of every factor; the row factor's element is read only when each row is a single design.</param>
/// <param name="SharedRowValues">The values of the row factor, the same in every row; empty when each row is a single design.</param>
public sealed record DesignBatch(long FirstNumber, int RowCount, double[] Rows, double[] SharedRowValues)
{
    /// <summary>Number of designs in a row.</summary>
    public int RowLength => Math.Max(1, SharedRowValues.Length);

    /// <summary>Number of designs.</summary>
    public int Count => RowCount * RowLength;

    /// <summary>Designs that share nothing, each a row of its own.</summary>
    /// <param name="firstNumber">Number of the first design; the rest follow it.</param>
    /// <param name="count">Number of designs.</param>
    /// <param name="designs">Design by design the value of every factor.</param>
    public static DesignBatch Single(long firstNumber, int count, double[] designs) => new(firstNumber, count, designs, []);

    /// <summary>The factors' values of one row.</summary>
    /// <param name="row">From 0.</param>
    /// <param name="factors">Number of factors of the problem.</param>
    public ReadOnlySpan<double> Row(int row, int factors) => Rows.AsSpan(row * factors, factors);

    /// <summary>The values the row factor takes along one row.</summary>
    /// <param name="row">From 0.</param>
    /// <param name="problem">The problem the designs are of.</param>
    public ReadOnlySpan<double> RowValues(int row, Problem problem) => SharedRowValues.Length > 0
        ? SharedRowValues
        : Row(row, problem.Factors.Count).Slice(problem.RowFactor, 1);

    /// <summary>Copies the values of every factor of one design.</summary>
    /// <param name="index">From 0.</param>
    /// <param name="problem">The problem the designs are of.</param>
    /// <param name="values">One element per factor of the problem.</param>
    public void CopyDesign(int index, Problem problem, Span<double> values)
    {
        var row = index / RowLength;
        Row(row, problem.Factors.Count).CopyTo(values);
        values[problem.RowFactor] = RowValues(row, problem)[index % RowLength];
    }
}
