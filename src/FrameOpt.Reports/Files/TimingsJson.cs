using System.Globalization;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Files;

/// <summary>timings.json: when and how long, apart from the other files because it differs each time.</summary>
internal static class TimingsJson
{
    /// <summary>Writes the timings of a run.</summary>
    /// <param name="timings">Of the run.</param>
    /// <param name="stream">UTF-8; left open.</param>
    public static void Write(RunTimings timings, Stream stream) => Write(
        timings.StartedUtc,
        timings.Threads,
        [("search", timings.SearchSeconds), ("scenarios", timings.ScenarioSeconds), ("certificate", timings.CertificateSeconds)],
        timings.Machine,
        stream);

    /// <summary>Writes the timings of any work.</summary>
    /// <param name="startedUtc">When the work began.</param>
    /// <param name="threads">Worker threads.</param>
    /// <param name="stages">What took how long.</param>
    /// <param name="machine">Operating system, architecture, processors.</param>
    /// <param name="stream">UTF-8; left open.</param>
    public static void Write(
        DateTime startedUtc, int threads, IEnumerable<(string Name, double Seconds)> stages, string machine, Stream stream)
    {
        using var json = JsonWriterExtensions.Writer(stream);
        json.WriteStartObject();
        json.WriteString("started_utc", startedUtc.ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture));
        json.WriteNumber("threads", threads);
        foreach (var (name, seconds) in stages)
            json.WriteQuantity(name, seconds, "s");
        json.WriteString("machine", machine);
        json.WriteEndObject();
    }
}
