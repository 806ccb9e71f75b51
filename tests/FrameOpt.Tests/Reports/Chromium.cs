using Microsoft.Playwright;

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

/// <summary>One browser for all tests of a class, started by the first that opens a page.</summary>
public sealed class ChromiumBrowser : IAsyncLifetime
{
    private IPlaywright? playwright;
    private IBrowser? browser;

    public Task InitializeAsync() => Task.CompletedTask;

    /// <summary>A page that shares no state with another.</summary>
    public async Task<IPage> NewPage()
    {
        playwright ??= await Playwright.CreateAsync();
        browser ??= await playwright.Chromium.LaunchAsync(
            new() { ExecutablePath = Chromium.Path, Args = Environment.UserName == "root" ? ["--no-sandbox"] : [] });
        return await browser.NewPageAsync();
    }

    public async Task DisposeAsync()
    {
        if (browser is not null)
            await browser.DisposeAsync();
        playwright?.Dispose();
    }
}
