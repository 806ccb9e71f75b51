using FrameOpt.Tests;
using FrameOpt.Tests.Reports;
using Microsoft.Playwright;

namespace FrameOpt.Web.Tests;

/// <summary>Each screen on a phone and on a desk, by touch, mouse and keys.</summary>
[Collection("application")]
public class ScreenTests(Application application)
{
    private static readonly string[] screens =
        ["Machine", "Holes", "Choices", "How sure", "Take away", "Scales", "Flight card", "Measured runs", "Product line", "Study file"];

    [Theory]
    [InlineData(360)]
    [InlineData(1280)]
    public async Task Every_screen_fits_its_window_and_an_accessibility_checker_finds_nothing(int width)
    {
        var page = await application.Begun(width);
        var found = new List<string>();
        foreach (var screen in screens)
        {
            await Application.Go(page, screen);
            if (screen == "Choices")
                await page.Locator(".front").First.WaitForAsync();
            found.AddRange((await Application.Faults(page, width)).Select(one => $"{screen} {one}"));
        }

        Assert.True(found.Count == 0, string.Join('\n', found.Distinct()));
    }

    [Fact]
    public async Task A_hole_follows_mouse_and_keys_and_every_phase_follows_the_hole()
    {
        var page = await application.Begun();
        await Application.Go(page, "Holes");
        var before = await page.Locator(".phases").InnerTextAsync();
        var grip = page.GetByRole(AriaRole.Slider, new() { Name = "Both holes: sideways and height" });
        Assert.Contains("no offset", await grip.GetAttributeAsync("aria-valuetext"));
        var box = (await grip.Locator("rect").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + box.Width / 2, box.Y + box.Height / 2);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + box.Width / 2 + 10, box.Y + box.Height / 2, new() { Steps = 4 });
        await page.Mouse.UpAsync();
        Assert.Contains("to the pilot's right", await grip.GetAttributeAsync("aria-valuetext"));
        Assert.NotEqual(before, await page.Locator(".phases").InnerTextAsync());

        await page.Locator("input[type=number]").First.FillAsync("12");
        await page.Locator("input[type=number]").First.BlurAsync();
        Assert.Contains("12 mm to the pilot's right", await grip.GetAttributeAsync("aria-valuetext"));
        await grip.FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        Assert.Contains("13 mm to the pilot's right", await grip.GetAttributeAsync("aria-valuetext"));
        await page.Keyboard.PressAsync("ArrowUp");
        Assert.Contains("210 mm above", await grip.GetAttributeAsync("aria-valuetext"));
        await Assertions.Expect(page.Locator("[aria-live=polite]")).ToContainTextAsync("Cruise");
    }

    [Fact]
    public async Task A_finger_sets_how_far_apart_the_holes_are()
    {
        var page = await application.Begun(360, isTouch: true);
        await page.Locator(".steps button", new() { HasText = "Holes" }).TapAsync();
        var hole = page.GetByRole(AriaRole.Slider, new() { Name = "Right hole: spacing" });
        var before = await hole.GetAttributeAsync("aria-valuetext");
        var box = (await hole.Locator("circle.hole").BoundingBoxAsync())!;
        var touch = await page.Context.NewCDPSessionAsync(page);
        async Task Send(string type, double right) => await touch.SendAsync("Input.dispatchTouchEvent", new()
        {
            ["type"] = type,
            ["touchPoints"] = type == "touchEnd" ? Array.Empty<object>()
                : [new Dictionary<string, object> { ["x"] = box.X + box.Width / 2 + right, ["y"] = box.Y + box.Height / 2 }],
        });
        await Send("touchStart", 0);
        await Send("touchMove", 5);
        await Send("touchMove", 10);
        await Send("touchEnd", 10);
        Assert.NotEqual(before, await hole.GetAttributeAsync("aria-valuetext"));
    }

    [Fact]
    public async Task A_dot_of_the_front_a_weight_and_a_kept_design_stand_side_by_side()
    {
        var page = await application.Begun();
        await Application.Go(page, "Choices");
        var front = page.Locator(".front").First;
        await front.ClickAsync(new() { Position = new() { X = 60, Y = 40 } });
        await Assertions.Expect(page.Locator(".verdict")).ToContainTextAsync("Rank");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep to compare" }).ClickAsync();
        await Assertions.Expect(page.Locator("thead")).ToContainTextAsync("kept 1");
        await page.Locator("#w-1").FillAsync("9");
        await page.Locator("#w-1").DispatchEventAsync("change");
        Assert.Contains("power_off_residual: 9", await Application.Text(page));
    }

    [Fact]
    public async Task The_printed_sheet_is_one_page_of_A4()
    {
        var page = await application.Begun();
        await Application.Go(page, "Take away");
        await page.Locator(".sheet").WaitForAsync();
        var pdf = System.Text.Encoding.Latin1.GetString(await page.PdfAsync(new() { PreferCSSPageSize = true }));
        Assert.Contains("/Count 1", pdf);
    }
}
