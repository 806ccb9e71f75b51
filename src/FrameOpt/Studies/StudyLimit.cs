using FrameOpt.Model.Mission;
using FrameOpt.Search;
using static System.FormattableString;

namespace FrameOpt.Studies;

/// <summary>A response with a bound.</summary>
/// <param name="Response">What is bounded.</param>
/// <param name="Magnitude">True when the size is bounded whatever the sign.</param>
/// <param name="AtLeast">Smallest value allowed, or null; in the response's unit.</param>
/// <param name="AtMost">Largest value allowed, or null; in the response's unit.</param>
public sealed record StudyLimit(Response Response, bool Magnitude, double? AtLeast, double? AtMost)
{
    /// <summary>The limit in words: "twist_margin_worst at least 3".</summary>
    public string Text
    {
        get
        {
            var parts = new List<string>();
            if (AtLeast is { } least)
                parts.Add(Invariant($"at least {least:0.######} {Response.Unit}").TrimEnd());
            if (AtMost is { } most)
                parts.Add(Invariant($"at most {most:0.######} {Response.Unit}").TrimEnd());
            return $"{Response.Name} {string.Join(" and ", parts)}{(Magnitude ? ", either way" : "")}";
        }
    }

    /// <summary>The same for a search.</summary>
    public Constraint AsConstraint => new(Response.Name, AtLeast ?? double.NegativeInfinity, AtMost ?? double.PositiveInfinity);

    /// <summary>What a design that flies has of it, in the response's unit; the size where the size is bounded.</summary>
    public double ValueOf(DesignEvaluation evaluation) =>
        Magnitude ? Math.Abs(evaluation[Response]) : evaluation[Response];
}
