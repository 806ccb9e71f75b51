using System.Globalization;
using FrameOpt.Reports.Files.Json;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>timings.json of a line: when and how long, apart from line.json because it differs each time.</summary>
/// <param name="StartedUtc">When.</param>
/// <param name="Threads">Worker threads.</param>
/// <param name="Stages">How long each took.</param>
/// <param name="Machine">Operating system, architecture, processors.</param>
public sealed record ProductLineTimings(DateTime StartedUtc, int Threads, ProductLineStepTimings Stages, string Machine)
{
    /// <summary>Writes the timings.</summary>
    /// <param name="stream">UTF-8; left open.</param>
    public void Write(Stream stream)
    {
        using var json = JsonWriterExtensions.Writer(stream);
        json.WriteStartObject();
        json.WriteString("started_utc", StartedUtc.ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture));
        json.WriteNumber("threads", Threads);
        json.WriteQuantity("candidates", Stages.Candidates, "s");
        json.WriteQuantity("costs", Stages.Costs, "s");
        json.WriteQuantity("choice", Stages.Choice, "s");
        json.WriteQuantity("telling", Stages.Results, "s");
        json.WriteString("machine", Machine);
        json.WriteEndObject();
    }
}
