using System.Globalization;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Files.Json;

/// <summary>timings.json: when and how long, apart from run.json because it differs each time.</summary>
public static class TimingsJson
{
    /// <summary>Writes the timings.</summary>
    /// <param name="timings">Of the run.</param>
    /// <param name="stream">UTF-8; left open.</param>
    public static void Write(RunTimings timings, Stream stream)
    {
        using var json = JsonWriterExtensions.Writer(stream);
        json.WriteStartObject();
        json.WriteString("started_utc", timings.StartedUtc.ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture));
        json.WriteNumber("threads", timings.Threads);
        json.WriteQuantity("search", timings.SearchSeconds, "s");
        json.WriteQuantity("scenarios", timings.ScenarioSeconds, "s");
        json.WriteQuantity("certificate", timings.CertificateSeconds, "s");
        json.WriteString("machine", timings.Machine);
        json.WriteEndObject();
    }
}
