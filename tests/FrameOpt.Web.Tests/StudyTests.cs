using FrameOpt.Cli;
using FrameOpt.Cli.Screen;
using FrameOpt.Tests;
using Microsoft.Playwright;

namespace FrameOpt.Web.Tests;

/// <summary>What happens to a study in the application: kept, corrected, taken away.</summary>
[Collection("application")]
public class StudyTests(Application application)
{
    private const int RandomEdits = 60;

    [Fact]
    public async Task A_value_typed_with_a_comma_comes_back_with_its_unit_and_comments_stay()
    {
        var page = await application.Begun();
        var diameter = page.Locator("#f-machine-propeller-diameter");
        await diameter.FillAsync("1,3");
        await diameter.BlurAsync();
        Assert.Equal("1.3 m", await diameter.InputValueAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "clockwise", Exact = true }).ClickAsync();
        var text = await Application.Text(page);
        Assert.Contains("diameter: 1.3 m", text);
        Assert.Contains("turns: clockwise               # the way it turns", text);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        Assert.Equal(await File.ReadAllTextAsync(Repository.Template("custom-match")), await Application.Text(page));
    }

    [Fact]
    public async Task A_reload_loses_nothing()
    {
        var page = await application.Begun();
        await page.Locator("#f-title").FillAsync("My own frame");
        await page.Locator("#f-title").BlurAsync();
        await Application.Go(page, "Holes");
        await page.Locator("input[type=number]").First.FillAsync("17");
        await page.Locator("input[type=number]").First.BlurAsync();
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator(".title")).ToHaveTextAsync("My own frame");
        await Assertions.Expect(page.Locator("input[type=number]").First).ToHaveValueAsync("17");
    }

    [Fact]
    public async Task A_damaged_study_opens_with_what_to_correct_beside_the_box()
    {
        var page = await application.Begun();
        var text = await Application.Text(page);
        await Application.Replace(page, text.Replace("diameter: 1.25 m", "diameter: 1.25 kg").Replace("span: 11 m", "span:"));
        await Assertions.Expect(page.Locator(".findings").First).ToContainTextAsync("2 things to correct");
        await Application.Go(page, "Machine");
        await Assertions.Expect(page.Locator(".field.wrong").First).ToContainTextAsync("1.25 kg is a mass");
        await Application.Go(page, "Holes");
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Correct this first");
    }

    [Fact]
    public async Task What_check_finds_odd_or_missing_stands_beside_its_box_in_the_same_words_until_it_is_mended()
    {
        var page = await application.Begun();
        var diameter = page.Locator(".field", new() { Has = page.Locator("#f-machine-propeller-diameter") });
        await Assertions.Expect(diameter).ToContainTextAsync("The template's figure, which is invented.");
        await Application.Type(page, "#f-machine-propeller-diameter", "2,5");
        // The words of UsualRangeTests.
        await Assertions.Expect(diameter).ToContainTextAsync("The diameter of the propeller is 2.5 m; 0.9 to 1.8 m is usual");
        await Assertions.Expect(diameter).Not.ToContainTextAsync("invented");
        await Assertions.Expect(page.Locator(".findings.mild")).ToContainTextAsync("the diameter of the propeller is 2.5 m");
        // Another box says what it has to say as well, and a unit that was wrong is not taken again.
        var span = page.Locator(".field", new() { Has = page.Locator("#f-wing-span") });
        await Application.Type(page, "#f-wing-span", "11 kg");
        await Assertions.Expect(span).ToContainTextAsync("wing.span wants a length");
        await Application.Type(page, "#f-wing-span", "10,5");
        await Assertions.Expect(span).Not.ToContainTextAsync("wants a length");
        await Assertions.Expect(page.Locator("#f-wing-span")).ToHaveValueAsync("10.5 m");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(page.Locator("#f-wing-span")).ToHaveValueAsync("11 kg");
        var text = await Application.Text(page);
        await Application.Replace(page, text.Replace("span: 11 kg", "").Replace("  turns: counter-clockwise", "  # turns"));
        await Application.Go(page, "Machine");
        await Assertions.Expect(span).ToContainTextAsync("wing.span is missing.");
        await Assertions.Expect(page.Locator(".turns")).ToContainTextAsync("machine.propeller.turns is missing.");
    }

    [Fact]
    public async Task Random_edits_never_break_the_application()
    {
        var page = await application.Begun();
        var errors = new List<string>();
        page.PageError += (_, error) => errors.Add(error);
        var random = new Random(18);
        string[] values =
            ["0", "-1 mm", "1e9 kg", "", "abc", "12,5", "1,500", "\"", "{", "5 mm", "77 kg", "*x", "- 3", "9 m # c", "99999999999"];
        string[] screens = ["Machine", "Holes", "Choices", "Take away"];
        for (var i = 0; i < RandomEdits; i++)
        {
            await Application.Go(page, "Machine");
            var boxes = page.Locator(".fields input");
            var box = boxes.Nth(random.Next(12));
            await box.FillAsync(values[random.Next(values.Length)]);
            await box.BlurAsync();
            if (random.Next(3) == 0)
                await page.Locator(".tools button").First.ClickAsync(new() { Force = true });
            await Application.Go(page, screens[random.Next(screens.Length)]);
        }

        Assert.Empty(errors);
        Assert.False(await page.Locator("#blazor-error-ui").IsVisibleAsync());
    }

    [Fact]
    public async Task Served_it_opens_the_study_asks_nobody_else_and_works_without_the_server_afterwards()
    {
        var page = await application.NewPage();
        var others = new List<string>();
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(application.Served) && !request.Url.StartsWith("blob:") && !request.Url.StartsWith("data:"))
                others.Add(request.Url);
        };
        var answer = await page.GotoAsync($"{application.Served}#opened/study.yaml");
        Assert.Contains("default-src 'none'", answer!.Headers["content-security-policy"]);
        await Assertions.Expect(page.Locator(".title")).ToContainTextAsync("A frame matched to one engine and one pilot");
        await page.EvaluateAsync("navigator.serviceWorker.ready.then(() => true)");
        await page.Context.SetOfflineAsync(true);
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator(".title")).ToContainTextAsync("A frame matched to one engine and one pilot");
        Assert.Empty(others);
    }

    /// <summary>One study by default, the quickest; with FRAMEOPT_ALL=1 every shipped study that the browser can run.</summary>
    public static TheoryData<string> Compared => Environment.GetEnvironmentVariable("FRAMEOPT_ALL") == "1"
        ? [.. Repository.Studies.Where(name => name != "fine-grid")] : ["drilled-holes"];

    [Theory]
    [MemberData(nameof(Compared))]
    public async Task The_files_are_those_of_the_command_line_byte_for_byte(string study)
    {
        using var temporary = new TemporaryFolder();
        var expected = temporary["results"];
        var console = Terminal.Console(TextWriter.Null, isPipe: true);
        App.Run(["run", Repository.Study(study), "--out", expected], new Terminal(console, console, Stream.Null, () => false));
        var page = await application.Opened(study, 1280, [.. Directory.GetFiles(Path.GetDirectoryName(Repository.Study(study))!)
            .Where(file => Path.GetExtension(file) is ".yaml" or ".csv").Select(file => Path.GetFileName(file))]);
        await Application.Go(page, "Take away");
        await page.Locator(".run .main").ClickAsync();
        await page.Locator(".files").WaitForAsync(new() { Timeout = 600_000 });
        var differ = new List<string>();
        foreach (var name in new[] { "report.html", "results.xlsx", "designs.csv", "run.json" })
        {
            var own = await File.ReadAllBytesAsync(await Application.Saved(page, name));
            var other = await File.ReadAllBytesAsync(Path.Combine(expected, name));
            if (!Enumerable.SequenceEqual(own, other))
                differ.Add(name);
        }

        Assert.Empty(differ);
    }

    [Fact]
    public async Task A_product_line_of_customers_pasted_from_a_spreadsheet_is_the_one_of_the_command_line()
    {
        string[] rows = ["name\tpilot_mass [kg]\tcount", "pupils\t62,5\t9", "tall, heavy\t88\t4", "club\t76\t6"];
        var page = await application.Begun();
        await Application.Go(page, "Product line");
        await page.Locator("#customers").FillAsync(string.Join('\n', rows));
        await page.Locator("#customers").BlurAsync();
        await Assertions.Expect(page.Locator("#customers")).ToHaveValueAsync(
            "name,pilot_mass [kg],count\npupils,62.5,9\n\"tall, heavy\",88,4\nclub,76,6\n");
        await Application.Type(page, "#f-line-variants", "2");
        await Application.Type(page, "#f-line-up_to", "2");
        await page.Locator(".run .main").ClickAsync();
        await page.Locator(".files").WaitForAsync(new() { Timeout = 300_000 });
        var own = await File.ReadAllBytesAsync(await Application.Saved(page, "line.json"));
        var cards = await File.ReadAllTextAsync(await Application.Saved(page, "cards.html"));

        using var temporary = new TemporaryFolder();
        await File.WriteAllTextAsync(temporary["study.yaml"], await Application.Text(page));
        await File.WriteAllTextAsync(temporary["customers.csv"], await page.Locator("[id='beside-customers.csv']").InputValueAsync());
        var console = Terminal.Console(TextWriter.Null, isPipe: true);
        var terminal = new Terminal(console, console, Stream.Null, () => false);
        App.Run(["line", temporary["study.yaml"], "--out", temporary["line"]], terminal);
        App.Run(["card", temporary["study.yaml"], "--all", "--out", temporary["cards.html"]], terminal);
        Assert.Equal(await File.ReadAllTextAsync(temporary["cards.html"]), cards);
        Assert.Equal(await File.ReadAllBytesAsync(Path.Combine(temporary["line"], "line.json")), own);
    }
}
