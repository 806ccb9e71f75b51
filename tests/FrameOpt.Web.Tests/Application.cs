using FrameOpt.Cli;
using FrameOpt.Cli.Screen;
using FrameOpt.Tests;
using FrameOpt.Tests.Reports;
using Microsoft.Playwright;

namespace FrameOpt.Web.Tests;

/// <summary>The published application in the system's Chromium: as one file from the disk, or served by `frameopt open`.</summary>
public sealed class Application : IAsyncLifetime
{
    private const int Port = 7492;

    private readonly string folder = Environment.GetEnvironmentVariable("FRAMEOPT_WEB") ?? Path.Combine(Repository.Root, "build", "web");
    private static readonly string axe = Path.Combine(Repository.Root, "tests", "page", "node_modules", "axe-core", "axe.min.js");

    private readonly StringWriter said = new();
    private IPlaywright? playwright;
    private IBrowser? browser;
    private Thread? server;
    private volatile bool isOver;

    public string OneFile => $"file://{folder}/frameopt.html";

    public string Served => $"http://127.0.0.1:{Port}/";

    public async Task InitializeAsync()
    {
        Assert.True(File.Exists(Path.Combine(folder, "frameopt.html")),
            $"nothing in {folder}; first: dotnet publish src/FrameOpt.Web -c Release -o build/web");
        playwright = await Playwright.CreateAsync();
        Assertions.SetDefaultExpectTimeout(30_000);
        browser = await playwright.Chromium.LaunchAsync(
            new() { ExecutablePath = Chromium.Path, Args = Environment.UserName == "root" ? ["--no-sandbox"] : [] });
        var console = Terminal.Console(said, isPipe: true);
        server = new Thread(() => App.Run(
            ["open", Repository.Study("custom-match"), "--no-browser", "--port", $"{Port}", "--web", Path.Combine(folder, "wwwroot")],
            new Terminal(console, console, Stream.Null, () => isOver)));
        server.Start();
    }

    /// <summary>A page that shares no state with another, in a window of a width; its errors fail the test that asks for them.</summary>
    public async Task<IPage> NewPage(int width = 1280, bool isTouch = false, bool isOffline = false)
    {
        var context = await browser!.NewContextAsync(new()
        {
            ViewportSize = new() { Width = width, Height = 850 },
            HasTouch = isTouch,
            Offline = isOffline,
            AcceptDownloads = true,
        });
        var page = await context.NewPageAsync();
        page.SetDefaultTimeout(60_000);
        return page;
    }

    /// <summary>Opens the one file with a study begun from the first template.</summary>
    public async Task<IPage> Begun(int width = 1280, bool isTouch = false)
    {
        var page = await NewPage(width, isTouch, isOffline: true);
        await page.GotoAsync(OneFile);
        await page.Locator(".card").First.ClickAsync();
        await page.Locator(".field").First.WaitForAsync();
        return page;
    }

    public static Task Go(IPage page, string screen) => page.Locator(".steps button", new() { HasText = screen }).ClickAsync();

    /// <summary>The study's text as it stands.</summary>
    public static async Task<string> Text(IPage page)
    {
        await Go(page, "Study file");
        return await page.Locator("#study-text").InputValueAsync();
    }

    public static async Task Type(IPage page, string box, string text)
    {
        await page.Locator(box).FillAsync(text);
        await page.Locator(box).BlurAsync();
    }

    public static async Task Replace(IPage page, string text)
    {
        await Go(page, "Study file");
        await page.Locator("#study-text").FillAsync(text);
        await page.Locator("#study-text").BlurAsync();
    }

    /// <summary>Opens files of a study's folder in the one file.</summary>
    public async Task<IPage> Opened(string study, int width, params string[] files)
    {
        var page = await NewPage(width, isOffline: true);
        await page.GotoAsync(OneFile);
        var beside = Path.GetDirectoryName(Repository.Study(study))!;
        await Choose(page, page.Locator(".card").Last, [.. files.Select(file => Path.Combine(beside, file))]);
        await page.Locator(".field").First.WaitForAsync();
        return page;
    }

    /// <summary>Gives files to what asks for them.</summary>
    public static async Task Choose(IPage page, ILocator asks, params string[] files) =>
        await (await page.RunAndWaitForFileChooserAsync(() => asks.ClickAsync())).SetFilesAsync(files);

    /// <summary>What a button saves.</summary>
    public static async Task<string> Saved(IPage page, string button)
    {
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = button }).ClickAsync());
        return await download.PathAsync();
    }

    /// <summary>What does not fit the window, and what an accessibility checker finds, light and dark.</summary>
    public static async Task<IReadOnlyList<string>> Faults(IPage page, int width)
    {
        var found = new List<string>();
        if (await page.EvaluateAsync<int>("document.documentElement.scrollWidth") is var wide && wide > width)
            found.Add($"is {wide} px wide");
        foreach (var scheme in new[] { ColorScheme.Light, ColorScheme.Dark }.Where(_ => File.Exists(axe)))
        {
            await page.EmulateMediaAsync(new() { ColorScheme = scheme });
            await page.EvaluateAsync(await File.ReadAllTextAsync(axe));
            found.AddRange((await page.EvaluateAsync<string[]>(
                "async () => (await axe.run(document)).violations.map(one => one.id + ': ' + one.nodes[0].html.slice(0, 200))"))
                .Select(one => $"{scheme}: {one}"));
        }

        return found;
    }

    public async Task DisposeAsync()
    {
        isOver = true;
        server?.Join();
        if (browser is not null)
            await browser.DisposeAsync();
        playwright?.Dispose();
    }
}

/// <summary>One application for all tests, one after the other: it has one port.</summary>
[CollectionDefinition("application")]
public sealed class ApplicationCollection : ICollectionFixture<Application>;
