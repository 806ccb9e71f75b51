namespace FrameOpt.Search;

/// <summary>Designs in rows: within a row only one factor, the row factor, changes.</summary>
/// <param name="FirstNumber">Number of the first design; the rest follow it.</param>
/// <param name="RowCount">How many rows.</param>
/// <param name="Rows">Row by row the value of every factor; the row factor's place in it is not read.</param>
/// <param name="RowValues">The values of the row factor, the same in every row.</param>
public sealed record DesignBatch(long FirstNumber, int RowCount, double[] Rows, double[] RowValues)
{
    /// <summary>How many designs.</summary>
    public int Count => RowCount * RowValues.Length;

    /// <summary>The factors' values of one row.</summary>
    /// <param name="row">From 0.</param>
    /// <param name="factors">How many factors the problem has.</param>
    public ReadOnlySpan<double> Row(int row, int factors) => Rows.AsSpan(row * factors, factors);
}
