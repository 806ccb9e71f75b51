using FrameOpt.Reports.Files;
using FrameOpt.Reports.Tables;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>The folder a line writes: plain files, all of them or none.</summary>
public static class ProductLineFolder
{
    /// <summary>Writes line.xlsx, line.html, fitting-chart.svg, customers.csv, line.json and timings.json.</summary>
    /// <param name="report">The line.</param>
    /// <param name="timings">Of working it out.</param>
    /// <param name="folder">Not yet complete.</param>
    public static void Write(ProductLineReport report, ProductLineTimings timings, ResultsFolder folder)
    {
        foreach (var (name, write) in Files(report))
            folder.Write(name, write);
        folder.Write("timings.json", stream => TimingsJson.Write(
            timings.StartedUtc, timings.Threads,
            [("candidates", timings.Stages.Candidates), ("costs", timings.Stages.Costs), ("choice", timings.Stages.Choice),
                ("telling", timings.Stages.Results)],
            timings.Machine, stream));
    }

    /// <summary>The files with their names, timings apart. Their bytes depend on the line alone.</summary>
    public static IReadOnlyList<(string Name, Action<Stream> Write)> Files(ProductLineReport report) =>
    [
        ("line.json", stream => ProductLineJson.Write(report, stream)),
        ("customers.csv", stream => CsvTable.Write(CustomerTable.Of(report.Result), stream)),
        ("fitting-chart.svg", stream => FittingChartDrawing.Write(report.Result, stream)),
        ("line.xlsx", stream => ProductLineWorkbook.Write(report, stream)),
        ("line.html", stream => ProductLinePage.Write(report, stream)),
    ];
}

/// <summary>All that the files of a product line are written from.</summary>
/// <param name="Result">The answer.</param>
/// <param name="Info">Where and with what it was made.</param>
public sealed record ProductLineReport(ProductLineResult Result, RunInfo Info);

/// <summary>When a line was worked out and how long it took.</summary>
/// <param name="StartedUtc">When the work began.</param>
/// <param name="Threads">Worker threads.</param>
/// <param name="Stages">How long each took.</param>
/// <param name="Machine">Operating system, architecture, processors.</param>
public sealed record ProductLineTimings(DateTime StartedUtc, int Threads, ProductLineStepTimings Stages, string Machine);
