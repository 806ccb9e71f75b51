using System.Text.RegularExpressions;
using FrameOpt.Cli;
using FrameOpt.Cli.Screen;
using FrameOpt.Tests;
using Microsoft.Playwright;

namespace FrameOpt.Web.Tests;

/// <summary>Two scales and the flight card: what the command fit says of the same readings.</summary>
[Collection("application")]
public sealed class MeasureTests(Application application) : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData(360)]
    [InlineData(1280)]
    public async Task Two_scales_give_the_hole_and_the_corrected_study_of_the_command_line(int width)
    {
        var said = Fit("--scales", "left 46.1 kgf, right 65.2 kgf");
        var page = await application.Opened("custom-match", width, "study.yaml");
        var before = await Application.Text(page);
        await MoveHoles(page);
        await Application.Go(page, "Scales");
        await Assertions.Expect(page.Locator(".first")).ToContainTextAsync("rated for lifting");
        await Application.Type(page, "#scale-left", "46,1 kg of force");
        await Assertions.Expect(page.Locator(".field.wrong")).ToContainTextAsync("is not known");
        await Application.Type(page, "#scale-left", "46,1");
        await Application.Type(page, "#scale-right", "65.2 kgf");
        await Assertions.Expect(page.Locator("#scale-left")).ToHaveValueAsync("46.1 kgf");
        // 1 kgf is 9.80665 N.
        await Assertions.Expect(page.Locator(".field").First).ToContainTextAsync("= 452.1 N");
        // By hand: 19.1 kgf x 440 mm / (2 x 111.3 kgf) - 20 mm = 17.8 mm, and without the offset 37.8 mm.
        var answer = page.Locator(".fit");
        await Assertions.Expect(answer).ToContainTextAsync("is 17.8 mm to the pilot's right");
        await Assertions.Expect(answer).ToContainTextAsync("the pilot's seat, sideways");
        Assert.Contains(await page.Locator(".verdict").InnerTextAsync(), said);
        Assert.Empty(await Application.Faults(page, width));
        await page.GetByRole(AriaRole.Button, new() { Name = "The study's baseline" }).ClickAsync();
        await Assertions.Expect(answer).ToContainTextAsync("is 37.8 mm to the pilot's right");
        await page.GetByRole(AriaRole.Button, new() { Name = "The design under Holes" }).ClickAsync();
        await Assertions.Expect(answer).ToContainTextAsync("is 17.8 mm to the pilot's right");

        await page.GetByRole(AriaRole.Button, new() { Name = "Take the corrected study over" }).ClickAsync();
        await Assertions.Expect(answer).ToContainTextAsync("Undo takes it back");
        Assert.Equal(await File.ReadAllTextAsync(folder["corrected.yaml"]), await Application.Text(page));
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        Assert.Equal(before, await Application.Text(page));
        await Application.Go(page, "Scales");
        await page.GetByRole(AriaRole.Button, new() { Name = "Look at the hole that fits" }).ClickAsync();
        var hole = Regex.Match(said, @"the best of the study is now: (?<mm>\d+) mm (?<side>left|right)\.");
        Assert.True(hole.Success, said);
        await Assertions.Expect(page.Locator("input[type=number]").First)
            .ToHaveValueAsync(hole.Groups["side"].Value == "left" ? $"-{hole.Groups["mm"].Value}" : hole.Groups["mm"].Value);
    }

    [Fact]
    public async Task With_holes_the_scales_name_a_pair_of_them()
    {
        var page = await application.Opened("drilled-holes", 1280, "study.yaml");
        await Application.Go(page, "Scales");
        await Application.Type(page, "#scale-left", "105 lb");
        await Application.Type(page, "#scale-right", "128 lb");
        await Assertions.Expect(page.Locator(".verdict")).ToContainTextAsync("LEFT hole");
        await Assertions.Expect(page.Locator(".verdict")).ToContainTextAsync("RIGHT hole");
    }

    [Theory]
    [InlineData(360)]
    [InlineData(1280)]
    public async Task A_filled_card_gives_the_corrected_study_of_the_command_line(int width)
    {
        var page = await application.Opened("custom-match", width, "study.yaml");
        await MoveHoles(page);
        await Application.Go(page, "Flight card");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin the card" }).ClickAsync();
        await page.Locator(".sheets button", new() { HasText = "Hang check" }).ClickAsync();
        await Assertions.Expect(page.Locator(".findings")).ToContainTextAsync("STOP and let down when a strap slips");
        var left = page.GetByLabel("Left scale");
        await left.FillAsync("53,7x");
        await left.BlurAsync();
        await Assertions.Expect(page.Locator(".field.wrong")).ToContainTextAsync("The unit `x` is not known: left scale wants a force.");
        await left.FillAsync("53,78");
        await left.BlurAsync();
        await Assertions.Expect(left).ToHaveValueAsync("53.78");
        await Assertions.Expect(page.Locator(".run-of-card .fields")).ToContainTextAsync("= 527.4 N");
        await Assertions.Expect(page.Locator(".run-of-card .fields")).ToContainTextAsync("right scale is still empty.");
        await page.GetByRole(AriaRole.Checkbox).First.ClickAsync();
        await Assertions.Expect(page.Locator(".field.wrong")).ToContainTextAsync("right scale is empty.");
        await page.ReloadAsync();
        await page.Locator(".sheets button", new() { HasText = "Hang check" }).ClickAsync();
        await Assertions.Expect(page.Locator(".sheets")).ToContainTextAsync("1 of 4");
        await Assertions.Expect(page.GetByRole(AriaRole.Checkbox).First).ToBeCheckedAsync();
        Assert.Empty(await Application.Faults(page, width));
        await page.Locator(".sheets button", new() { HasText = "What they say" }).ClickAsync();
        await Assertions.Expect(page.Locator(".findings")).ToContainTextAsync("right scale: right scale is empty.");

        var filled = Path.Combine(Path.GetDirectoryName(Repository.Study("custom-match"))!, "measured.csv");
        var take = page.GetByRole(AriaRole.Button, new() { Name = "Take a filled form" });
        await Application.Choose(page, take, filled);
        await Assertions.Expect(page.Locator(".sheets")).ToContainTextAsync("12 of 12");
        var book = folder["measurements.xlsx"];
        File.Copy(await Application.Saved(page, "Save measurements.xlsx"), book);
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin an empty card" }).ClickAsync();
        await Assertions.Expect(page.Locator(".sheets")).ToContainTextAsync("0 of 12");
        await Application.Choose(page, take, book);
        await Assertions.Expect(page.Locator(".sheets")).ToContainTextAsync("12 of 12");
        File.Copy(await Application.Saved(page, "Save measurements.csv"), folder["measurements.csv"]);
        Assert.Equal(File.ReadAllText(filled), File.ReadAllText(folder["measurements.csv"]));
        await page.Locator(".sheets button", new() { HasText = "What they say" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).ClickAsync();
        await page.Locator(".fit").WaitForAsync(new() { Timeout = 300_000 });
        await Assertions.Expect(page.Locator(".fit")).ToContainTextAsync("Predicted beside measured");
        Assert.Empty(await Application.Faults(page, width));
        await page.GetByRole(AriaRole.Button, new() { Name = "Take the corrected study over" }).ClickAsync();
        var said = Fit("--measured", folder["measurements.csv"]);
        Assert.Contains(await page.Locator(".verdict").InnerTextAsync(), said);
        Assert.Equal(await File.ReadAllTextAsync(folder["corrected.yaml"]), await Application.Text(page));
    }

    [Theory]
    [InlineData(360)]
    [InlineData(1280)]
    public async Task Measured_runs_give_the_page_of_the_command_line(int width)
    {
        var measured = folder["measured-runs.csv"];
        File.Copy(Path.Combine(Path.GetDirectoryName(Repository.Study("rationale"))!, "measured.csv"), measured);
        var page = await application.Opened("rationale", width, "study.yaml");
        await Application.Go(page, "Measured runs");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin with the runs of this study's plan" }).ClickAsync();
        await Assertions.Expect(page.Locator("#runs")).ToHaveValueAsync(new Regex("^order,run,block,kind,"), new() { Timeout = 120_000 });
        await page.GetByRole(AriaRole.Button, new() { Name = "Analyse" }).ClickAsync();
        await Assertions.Expect(page.Locator(".verdict")).ToContainTextAsync("Correct this first");
        await Application.Choose(page, page.GetByRole(AriaRole.Button, new() { Name = "Take a file" }), measured);
        await Assertions.Expect(page.Locator("#runs")).ToHaveValueAsync(await File.ReadAllTextAsync(measured));
        await page.GetByLabel("Keep only the terms that earn their place").CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Analyse" }).ClickAsync();
        var saved = page.GetByRole(AriaRole.Button, new() { Name = "runs.html" });
        await saved.WaitForAsync(new() { Timeout = 120_000 });
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator("#runs")).ToHaveValueAsync(await File.ReadAllTextAsync(measured));
        await page.GetByRole(AriaRole.Button, new() { Name = "Analyse" }).ClickAsync();
        await saved.WaitForAsync(new() { Timeout = 120_000 });
        Assert.Empty(await Application.Faults(page, width));
        var said = new StringWriter();
        var console = Terminal.Console(said, isPipe: true);
        Assert.Equal(ExitCode.Success, App.Run(["analyse", measured, "--select", "--out", folder["runs.html"]],
            new Terminal(console, console, Stream.Null, () => false)));
        var own = await Application.Saved(page, "runs.html");
        Assert.Equal(await File.ReadAllTextAsync(folder["runs.html"]), await File.ReadAllTextAsync(own));
    }

    /// <summary>What the command line says of custom-match built 20 mm to the left; its corrected study is corrected.yaml.</summary>
    private string Fit(params string[] readings)
    {
        var said = new StringWriter();
        var console = Terminal.Console(said, isPipe: true);
        Assert.Equal(ExitCode.Success, App.Run(["fit", Repository.Study("custom-match"), .. readings, "--set", "lateral_offset=-20 mm",
            "--out", folder["corrected.yaml"]], new Terminal(console, console, Stream.Null, () => false)));
        return Regex.Replace(said.ToString(), @"\s+", " ");
    }

    private static async Task MoveHoles(IPage page)
    {
        await Application.Go(page, "Holes");
        await Application.Type(page, "input[type=number] >> nth=0", "-20");
    }
}
