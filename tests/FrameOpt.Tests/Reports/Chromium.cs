namespace FrameOpt.Tests.Reports;

/// <summary>The Chromium of the system, where there is one: nothing is downloaded.</summary>
public static class Chromium
{
    public static string? Path { get; } = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(System.IO.Path.PathSeparator)
        .SelectMany(folder => ((string[])["chromium", "chromium-browser"]).Select(name => System.IO.Path.Combine(folder, name)))
        .FirstOrDefault(File.Exists);
}

/// <summary>A test that needs Chromium; it says so and is skipped where there is none.</summary>
public sealed class ChromiumFactAttribute : FactAttribute
{
    public ChromiumFactAttribute()
    {
        if (Chromium.Path is null)
            Skip = "Chromium is not installed, so nothing here can open a page";
    }
}
