namespace FrameOpt.Numerics;

/// <summary>A table that is linear between its rows and has no value outside them.</summary>
public sealed class LinearTable
{
    private readonly double[] x;
    private readonly double[] y;

    /// <summary>Takes the rows as they are.</summary>
    /// <param name="x">At least two, strictly increasing.</param>
    /// <param name="y">As many as <paramref name="x"/>.</param>
    /// <exception cref="ArgumentException">The rows break these rules.</exception>
    public LinearTable(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        if (x.Count < 2 || x.Count != y.Count)
            throw new ArgumentException("a table needs two rows or more, and a value in each", nameof(y));
        for (var i = 1; i < x.Count; i++)
        {
            if (!(x[i] > x[i - 1]))
                throw new ArgumentException("the rows of a table must be in increasing order", nameof(x));
        }

        this.x = [.. x];
        this.y = [.. y];
    }

    private LinearTable(double[] x, double[] y) => (this.x, this.y) = (x, y);

    /// <summary>The first row's argument.</summary>
    public double Smallest => x[0];

    /// <summary>The last row's argument.</summary>
    public double Largest => x[^1];

    /// <summary>The arguments of the rows.</summary>
    public IReadOnlyList<double> Arguments => x;

    /// <summary>The values of the rows.</summary>
    public IReadOnlyList<double> Values => y;

    /// <summary>The same table with every value times a factor.</summary>
    public LinearTable Scaled(double factor) => factor == 1 ? this : new(x, Array.ConvertAll(y, value => factor * value));

    /// <summary>True where the table has a value.</summary>
    public bool Covers(double argument) => argument >= x[0] && argument <= x[^1];

    /// <summary>The value by linear interpolation between the rows on either side.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the rows: ask <see cref="Covers"/> first.</exception>
    public double ValueAt(double argument)
    {
        if (!Covers(argument))
            throw new ArgumentOutOfRangeException(nameof(argument), argument, "outside the rows of the table");
        var i = 1;
        while (i < x.Length - 1 && argument > x[i])
            i++;
        var share = (argument - x[i - 1]) / (x[i] - x[i - 1]);
        return y[i - 1] + share * (y[i] - y[i - 1]);
    }

    /// <summary>The argument at which the table falls below k x²: in the last interval that begins at or above it and ends at or
    /// below.</summary>
    /// <param name="k">The first row lies at or above k x², the last at or below.</param>
    /// <remarks>With x = x_i + d in an interval of slope b: y_i + b d = k (x_i + d)².</remarks>
    public double FallsBelowSquare(double k)
    {
        var i = x.Length - 2;
        while (i > 0 && y[i] < k * x[i] * x[i])
            i--;
        var b = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        return Math.Min(x[i] + Quadratic.FallingRoot(-k, b - 2 * k * x[i], y[i] - k * x[i] * x[i]), x[i + 1]);
    }
}
