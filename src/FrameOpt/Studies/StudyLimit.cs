using FrameOpt.Model.Mission;
using FrameOpt.Search;

namespace FrameOpt.Studies;

/// <summary>A response with a bound.</summary>
/// <param name="Response">What is bounded.</param>
/// <param name="Magnitude">True when the size is bounded whatever the sign.</param>
/// <param name="AtLeast">Smallest value allowed, or null; in the response's unit.</param>
/// <param name="AtMost">Largest value allowed, or null; in the response's unit.</param>
public sealed record StudyLimit(Response Response, bool Magnitude, double? AtLeast, double? AtMost)
{
    /// <summary>The same for a search.</summary>
    public Constraint AsConstraint => new(Response.Name, AtLeast ?? double.NegativeInfinity, AtMost ?? double.PositiveInfinity);

    /// <summary>What a design that flies has of it, in the response's unit; the size where the size is bounded.</summary>
    public double ValueOf(DesignEvaluation evaluation) =>
        Magnitude ? Math.Abs(evaluation[Response]) : evaluation[Response];
}
