using FrameOpt.Reports.Answer;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>All that the files of a product line are written from.</summary>
/// <param name="Result">The answer.</param>
/// <param name="Info">Where and with what it was made.</param>
public sealed record ProductLineReport(ProductLineResult Result, RunInfo Info) : IReportSource
{
    /// <summary>As understood.</summary>
    public Study Study => Result.Study;
}
