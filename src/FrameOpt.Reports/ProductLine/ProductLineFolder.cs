using FrameOpt.Reports.Files;
using FrameOpt.Reports.Tables;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>The folder a line writes: plain files, all of them or none.</summary>
public static class ProductLineFolder
{
    /// <summary>The file by which such a folder is known.</summary>
    private const string MarkerFile = "line.json";

    /// <summary>Why a line may not be written there, in words, or null when it may.</summary>
    /// <param name="path">Where it should go.</param>
    /// <param name="replace">True when an older one there may be lost.</param>
    public static string? WriteObstacle(string path, bool replace) => AtomicFolder.WriteObstacle(path, replace, MarkerFile);

    /// <summary>Writes line.xlsx, line.html, fitting-chart.svg, customers.csv, line.json and timings.json.</summary>
    /// <param name="report">The line.</param>
    /// <param name="timings">Of working it out.</param>
    /// <param name="path">The folder; made with its parents.</param>
    /// <param name="replace">True to put the new results in the place of older ones.</param>
    /// <exception cref="IOException"><see cref="WriteObstacle"/> has a reason, or the disk refuses; what stood there before stands there
    /// still.</exception>
    public static void Write(ProductLineReport report, ProductLineTimings timings, string path, bool replace)
    {
        if (WriteObstacle(path, replace) is { } reason)
            throw new IOException(reason);
        AtomicFolder.Write(path, replace, folder =>
        {
            AtomicFolder.WriteFile(folder, MarkerFile, stream => ProductLineJson.Write(report, stream));
            AtomicFolder.WriteFile(folder, "customers.csv", stream => CsvTable.Write(CustomerTable.Of(report.Result), stream));
            AtomicFolder.WriteFile(folder, "fitting-chart.svg", stream => FittingChartDrawing.Write(report.Result, stream));
            AtomicFolder.WriteFile(folder, "line.xlsx", stream => ProductLineWorkbook.Write(report, stream));
            AtomicFolder.WriteFile(folder, "line.html", stream => ProductLinePage.Write(report, stream));
            AtomicFolder.WriteFile(folder, "timings.json", stream => TimingsJson.Write(
                timings.StartedUtc, timings.Threads,
                [("candidates", timings.Stages.Candidates), ("costs", timings.Stages.Costs), ("choice", timings.Stages.Choice),
                    ("telling", timings.Stages.Results)],
                timings.Machine, stream));
        });
    }
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
