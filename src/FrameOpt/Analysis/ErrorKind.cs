namespace FrameOpt.Analysis;

/// <summary>Where the differences between runs come from: it decides whether anything can be tested.</summary>
public enum ErrorKind
{
    /// <summary>Runs that were measured: the same design run again gives another number, so that effects can be tested against that error.</summary>
    Measured,

    /// <summary>Runs of a computed model: the same design gives the same number, so that there is no error to test against.
    /// Standard errors, F ratios, p-values and intervals are null; contributions and the cross-validated error stand in their place.</summary>
    Deterministic,
}
