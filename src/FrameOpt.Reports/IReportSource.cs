using FrameOpt.Studies;

namespace FrameOpt.Reports;

/// <summary>What files are written from: names them in headers and says what they rest on.</summary>
internal interface IReportSource
{
    /// <summary>As understood.</summary>
    Study Study { get; }

    /// <summary>Where and with what it was made.</summary>
    RunInfo Info { get; }
}
