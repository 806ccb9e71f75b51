namespace FrameOpt.Search;

/// <summary>Designs in rows: within a row only one factor, the row factor, changes.</summary>
/// <param name="FirstNumber">Number of the first design; the rest follow it.</param>
/// <param name="RowCount">How many rows.</param>
/// <param name="Rows">Row by row the value of every factor; the row factor's place in it is read only when each row is one design.</param>
/// <param name="SharedRowValues">The values of the row factor, the same in every row; empty when each row is one design of its own.</param>
public sealed record DesignBatch(long FirstNumber, int RowCount, double[] Rows, double[] SharedRowValues)
{
    /// <summary>How many designs a row holds.</summary>
    public int RowLength => Math.Max(1, SharedRowValues.Length);

    /// <summary>How many designs.</summary>
    public int Count => RowCount * RowLength;

    /// <summary>Designs that have nothing in common, each a row of its own.</summary>
    /// <param name="firstNumber">Number of the first design; the rest follow it.</param>
    /// <param name="count">How many.</param>
    /// <param name="designs">Design by design the value of every factor.</param>
    public static DesignBatch Single(long firstNumber, int count, double[] designs) => new(firstNumber, count, designs, []);

    /// <summary>The factors' values of one row.</summary>
    /// <param name="row">From 0.</param>
    /// <param name="factors">How many factors the problem has.</param>
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
    /// <param name="values">As many places as the problem has factors.</param>
    public void CopyDesign(int index, Problem problem, Span<double> values)
    {
        var row = index / RowLength;
        Row(row, problem.Factors.Count).CopyTo(values);
        values[problem.RowFactor] = RowValues(row, problem)[index % RowLength];
    }
}
