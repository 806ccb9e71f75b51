namespace FrameOpt.Search.Evolution;

/// <summary>Normalisation of the objectives: from the ideal point to the intercepts of the hyperplane through the extreme points.</summary>
/// <remarks>Source: Deb and Jain 2014, section IV-C (from memory). Where there is no such plane, to the worst value of the front.</remarks>
internal sealed class ObjectiveNormalisation
{
    private const double OffAxis = 1e6; // weight of the objectives that are not the axis
    private const double MinScale = 1e-12;
    private readonly int objectives;
    private readonly double[] ideal;
    private readonly double[] worst;
    private readonly double[][] extremes;
    private readonly double[] scale;

    public ObjectiveNormalisation(int objectives)
    {
        this.objectives = objectives;
        ideal = new double[objectives];
        Array.Fill(ideal, double.PositiveInfinity);
        worst = new double[objectives];
        extremes = new double[objectives][];
        scale = new double[objectives];
    }

    /// <summary>Updates the ideal and extreme points with the front of a generation.</summary>
    public void Update(Population population, ReadOnlySpan<int> front)
    {
        Array.Fill(worst, double.NegativeInfinity);
        foreach (var member in front)
        {
            var values = population.ValuesOf(member);
            for (var j = 0; j < objectives; j++)
            {
                ideal[j] = Math.Min(ideal[j], values[j]);
                worst[j] = Math.Max(worst[j], values[j]);
            }
        }

        for (var axis = 0; axis < objectives; axis++)
        {
            foreach (var member in front)
            {
                var values = population.ValuesOf(member);
                if (extremes[axis] is null || AxisDistance(values, axis) < AxisDistance(extremes[axis], axis))
                    extremes[axis] = values.ToArray();
            }
        }

        var plane = HyperplaneCoefficients();
        for (var j = 0; j < objectives; j++)
            scale[j] = plane is null ? Math.Max(worst[j] - ideal[j], MinScale) : Math.Max(1 / plane[j], MinScale);
    }

    /// <summary>The normalised objectives of a design.</summary>
    public void Normalise(ReadOnlySpan<double> values, Span<double> point)
    {
        for (var j = 0; j < objectives; j++)
            point[j] = (values[j] - ideal[j]) / scale[j];
    }

    private double AxisDistance(ReadOnlySpan<double> point, int axis)
    {
        var most = double.NegativeInfinity;
        for (var j = 0; j < objectives; j++)
            most = Math.Max(most, (point[j] - ideal[j]) * (j == axis ? 1 : OffAxis));
        return most;
    }

    /// <summary>Solves sum of coefficient x (extreme - ideal) = 1 for all extremes by elimination; null when the extreme points define no
    /// hyperplane with positive intercepts.</summary>
    private double[]? HyperplaneCoefficients()
    {
        var n = objectives;
        var rows = Array.ConvertAll(extremes, extreme => (double[])[.. extreme.Select((value, j) => value - ideal[j]), 1]);
        for (var c = 0; c < n; c++)
        {
            var pivot = Enumerable.Range(c, n - c).MaxBy(r => Math.Abs(rows[r][c]));
            (rows[c], rows[pivot]) = (rows[pivot], rows[c]);
            if (!(Math.Abs(rows[c][c]) > 1e-12))
                return null;
            for (var r = 0; r < n; r++)
            {
                if (r == c)
                    continue;
                var factor = rows[r][c] / rows[c][c];
                for (var k = c; k <= n; k++)
                    rows[r][k] -= factor * rows[c][k];
            }
        }

        var solution = new double[n];
        for (var c = 0; c < n; c++)
            solution[c] = rows[c][n] / rows[c][c];
        return Array.TrueForAll(solution, x => x > 0) ? solution : null;
    }
}
