using System.Text.RegularExpressions;
using FrameOpt.Model.Mission;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads responses over cases: "mean of residual_rms", "share of cases with twist_margin_worst at least 3".</summary>
internal static partial class CaseResponseReader
{
    private const string Forms = "Write mean of, standard deviation of, worst of, percentile 90 of or mean of worst 10 % of and a "
        + "response; or share of cases with a response at least or at most an amount; or share of cases with every limit met.";

    /// <summary>True for text that begins like a response over cases.</summary>
    public static bool IsOverCases(string text) => Beginning().IsMatch(text);

    /// <summary>Reads one.</summary>
    /// <param name="responses">Reads the response of one case.</param>
    /// <param name="text">As written.</param>
    /// <param name="at">Where.</param>
    /// <param name="diagnostics">Receives what is wrong with it.</param>
    /// <param name="response">Null after an error.</param>
    /// <returns>False for a response of one case.</returns>
    public static bool Read(ResponseReader responses, string text, Node at, DiagnosticBag diagnostics, out Response? response)
    {
        response = null;
        if (!IsOverCases(text))
            return false;
        if (text == Response.LimitsMet.Words)
        {
            response = new Response.LimitsMet();
            return true;
        }

        var (statistic, single) = Share().Match(text) is { Success: true } share ? Share(share, responses, at, diagnostics)
            : Statistic().Match(text) is { Success: true } found ? Statistic(found, responses, at, diagnostics)
            : Unknown(at, diagnostics);
        if (statistic is null || single is null)
            return true;
        if (single.Entry.Sign == ResponseSign.Either && !single.Entry.IsHigherBetter
            && statistic is CaseStatistic.Worst or CaseStatistic.MeanOfWorst)
        {
            diagnostics.Add(at, $"{single.Name} may be off to either side of 0, so that no end of it is the worst.",
                "Write a percentile, mean or standard deviation of it.");
            return true;
        }

        response = new Response.OverCases(single, statistic);
        return true;
    }

    private static (CaseStatistic?, Response?) Unknown(Node at, DiagnosticBag diagnostics)
    {
        diagnostics.Add(at, "This is not the name of a response over cases.", Forms);
        return (null, null);
    }

    private static (CaseStatistic?, Response?) Statistic(Match found, ResponseReader responses, Node at, DiagnosticBag diagnostics)
    {
        var single = responses.Read(found.Groups["response"].Value, at);
        var number = found.Groups["percent"];
        var percent = 0.0;
        if (number.Success)
        {
            percent = NumberText.Parse(number.Value) is { Message: null, Unit: "", Value: > 0 and < 100 and var value } ? value
                : double.NaN;
            if (double.IsNaN(percent))
            {
                diagnostics.Add(at, $"{number.Value} is not a share of the cases: above 0 and below 100 %.", Forms);
                return (null, null);
            }
        }

        return (found.Groups["kind"].Value.Split(' ') switch
        {
            ["standard", ..] => new CaseStatistic.StandardDeviation(),
            ["worst"] => new CaseStatistic.Worst(),
            ["percentile", ..] => new CaseStatistic.Percentile(percent),
            ["mean", "of", ..] => new CaseStatistic.MeanOfWorst(percent),
            _ => new CaseStatistic.Mean(),
        }, single);
    }

    private static (CaseStatistic?, Response?) Share(Match found, ResponseReader responses, Node at, DiagnosticBag diagnostics)
    {
        if (responses.Read(found.Groups["response"].Value, at) is not { } single)
            return (null, null);
        var (side, amount) = (found.Groups["side"].Value, found.Groups["amount"].Value);
        var node = new Node.Scalar(amount, false, at.Line, at.Column);
        if (ResponseAmount.Of(node, $"the bound of {single.Name}", single, AllowedRange.None, diagnostics) is not { } bound)
            return (null, null);
        return (side == "at least"
            ? new CaseStatistic.Share(bound, double.PositiveInfinity, $"{side} {amount}")
            : new CaseStatistic.Share(double.NegativeInfinity, bound, $"{side} {amount}"), single);
    }

    [GeneratedRegex("^(mean|standard deviation|worst|percentile|share)\\b")]
    private static partial Regex Beginning();

    [GeneratedRegex("^(?<kind>mean of worst (?<percent>\\S+) ?%|percentile (?<percent>\\S+)|mean|standard deviation|worst) "
        + "of (?<response>\\S+)$")]
    private static partial Regex Statistic();

    [GeneratedRegex("^share of cases with (?<response>\\S+) (?<side>at least|at most) (?<amount>\\S.*)$")]
    private static partial Regex Share();
}
