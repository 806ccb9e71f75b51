namespace FrameOpt.Plans;

/// <summary>How many runs at the middle a central composite plan has.</summary>
public sealed record CentreRuns
{
    /// <summary>Counts of nought or more.</summary>
    /// <param name="withCube">Beside the cube, in its block.</param>
    /// <param name="withAxial">Beside the axial runs, in their block.</param>
    /// <exception cref="ArgumentException">A negative count.</exception>
    public CentreRuns(int withCube, int withAxial)
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
