namespace FrameOpt.Tests.Reports;

/// <summary>The Chromium of the system, where there is one: nothing is downloaded.</summary>
public static class Chromium
{
    public static string? Path { get; } = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(System.IO.Path.PathSeparator)
        .SelectMany(folder => ((string[])["chromium", "chromium-browser"]).Select(name => System.IO.Path.Combine(folder, name)))
        .FirstOrDefault(File.Exists);
}
