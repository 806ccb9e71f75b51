using FrameOpt.Numerics;

namespace FrameOpt.Plans;

/// <summary>Response-surface plans of a two-level cube, two axial runs per factor, and centre points.</summary>
/// <remarks>Source: G. E. P. Box and K. B. Wilson 1951, On the experimental attainment of optimum conditions, J. Roy. Stat. Soc. B 13:1-45;
/// R. H. Myers, D. C. Montgomery and C. M. Anderson-Cook 2009, Response Surface Methodology, ch. 7 (from memory).</remarks>
public static class CentralComposite
{
    /// <summary>A central composite plan on the full cube.</summary>
    /// <param name="factors">The names, 2 to 10.</param>
    /// <param name="rule">Rule for the distance of the axial runs.</param>
    /// <param name="centrePoints">Centre points: with the cube, and with the axial runs.</param>
    /// <param name="inBlocks">Whether cube and axial runs are two blocks, each with its own centre points.</param>
    /// <exception cref="ArgumentException">The arguments do not define a central composite plan.</exception>
    public static Plan Build(IReadOnlyList<string> factors, AxialRule rule, CentrePoints centrePoints, bool inBlocks = false)
    {
        PlanArguments.Factors(factors, "central composite plan", 2, 10);
        return OnCube(FullFactorial.TwoLevel(factors), rule, centrePoints, inBlocks);
    }

    /// <summary>A central composite plan on a fraction of the cube that does not confound main effects and two-factor
    /// interactions.</summary>
    /// <param name="cube">A two-level fraction of resolution V or more.</param>
    /// <param name="rule">Rule for the distance of the axial runs.</param>
    /// <param name="centrePoints">Centre points: with the cube, and with the axial runs.</param>
    /// <param name="inBlocks">Whether cube and axial runs are two blocks, each with its own centre points.</param>
    /// <exception cref="ArgumentException">A resolution below V, or the arguments do not define a central composite plan.</exception>
    public static Plan Build(FractionalPlan cube, AxialRule rule, CentrePoints centrePoints, bool inBlocks = false)
    {
        if (cube.Fraction.Resolution < 5)
        {
            throw new ArgumentException(
                $"the cube has resolution {cube.Fraction.Resolution}, so interactions of two factors are confounded; "
                + "take a fraction of resolution 5 or more");
        }

        return OnCube(cube.Plan, rule, centrePoints, inBlocks);
    }

    /// <summary>Distance of the axial runs from the centre, in coded units.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="factors">Number of factors.</param>
    /// <param name="cubeRuns">Number of runs of the cube.</param>
    /// <param name="centrePoints">Centre points.</param>
    public static double AxialDistance(AxialRule rule, int factors, int cubeRuns, CentrePoints centrePoints) => rule switch
    {
        AxialRule.Rotatable => Elementary.Pow(cubeRuns, 0.25),
        AxialRule.Spherical => Math.Sqrt(factors),
        AxialRule.FaceCentred => 1,
        AxialRule.Orthogonal => Math.Sqrt(
            (Math.Sqrt((double)cubeRuns * (cubeRuns + (2 * factors) + centrePoints.WithCube + centrePoints.WithAxial)) - cubeRuns) / 2),
        AxialRule.BlockOrthogonal => Math.Sqrt(
            (double)cubeRuns * ((2 * factors) + centrePoints.WithAxial) / (2.0 * (cubeRuns + centrePoints.WithCube))),
        _ => throw new ArgumentOutOfRangeException(nameof(rule)),
    };

    private static Plan OnCube(Plan cube, AxialRule rule, CentrePoints centrePoints, bool inBlocks)
    {
        if (rule == AxialRule.BlockOrthogonal && !inBlocks)
            throw new ArgumentException("the block-orthogonal axial distance is for a plan in blocks");
        var factors = cube.Factors.Count;
        var distance = AxialDistance(rule, factors, cube.Runs.Count, centrePoints);
        var axialBlock = inBlocks ? 2 : 1;
        var axial = from f in Enumerable.Range(0, factors)
                    from end in (double[])[-distance, distance]
                    select new PlanRun(0, PointKind.Axial, axialBlock, OnAxis(factors, f, end));
        return Plan.Numbered(
            $"central composite, axial runs at {distance:0.####}",
            cube.Factors,
            [.. cube.Runs, .. Plan.Centres(factors, centrePoints.WithCube), .. axial,
                .. Plan.Centres(factors, centrePoints.WithAxial, axialBlock)]);
    }

    private static double[] OnAxis(int factors, int factor, double end)
    {
        var point = new double[factors];
        point[factor] = end;
        return point;
    }
}

/// <summary>Rules for the distance of the axial runs of a central composite plan.</summary>
public enum AxialRule
{
    /// <summary>The fourth root of the cube's runs: the variance of prediction depends on the distance from the middle only.</summary>
    Rotatable,

    /// <summary>The root of the number of factors: axial runs as far out as the corners.</summary>
    Spherical,

    /// <summary>One: three levels of each factor, none outside the cube.</summary>
    FaceCentred,

    /// <summary>The estimates of the quadratic terms are uncorrelated.</summary>
    Orthogonal,

    /// <summary>With cube and axial runs in two blocks, the difference of the blocks does not touch the terms of the model.</summary>
    BlockOrthogonal,
}

/// <summary>Numbers of centre points of a central composite plan.</summary>
public sealed record CentrePoints
{
    /// <summary>Initialises the counts.</summary>
    /// <param name="withCube">Beside the cube, in its block.</param>
    /// <param name="withAxial">Beside the axial runs, in their block.</param>
    /// <exception cref="ArgumentException">A negative count.</exception>
    public CentrePoints(int withCube, int withAxial)
    {
        PlanArguments.NotNegative(withCube, "number of centre runs with the cube");
        PlanArguments.NotNegative(withAxial, "number of centre runs with the axial runs");
        (WithCube, WithAxial) = (withCube, withAxial);
    }

    /// <summary>Beside the cube.</summary>
    public int WithCube { get; }

    /// <summary>Beside the axial runs.</summary>
    public int WithAxial { get; }
}
