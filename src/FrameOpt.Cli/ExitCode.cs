namespace FrameOpt.Cli;

/// <summary>What the program tells the shell.</summary>
public static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Success = 0;

    /// <summary>Something the user has to mend: the command, the study file, the place for results.</summary>
    public const int InvalidInput = 2;

    /// <summary>No design keeps every limit, none can fly, or the design asked for cannot fly.</summary>
    public const int NothingFeasible = 3;

    /// <summary>A fault of the program itself.</summary>
    public const int InternalError = 70;

    /// <summary>Stopped by Ctrl-C or a signal to end; what was found by then is written.</summary>
    public const int Interrupted = 130;
}
