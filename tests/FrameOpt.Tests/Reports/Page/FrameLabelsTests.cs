using System.Xml.Linq;
using FrameOpt.Model;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Page;
using FrameOpt.Tests.Model;

namespace FrameOpt.Tests.Reports.Page;

/// <summary>Labels of the three views of the frame, over random designs.</summary>
public sealed class FrameLabelsTests(ChromiumBrowser chromium) : IClassFixture<ChromiumBrowser>
{
    private const int Designs = 300;

    /// <summary>Pairs of labels whose boxes, as the browser sets them, share more than half a unit; a box has empty room above and below
    /// its letters.</summary>
    private const string Touching = """
        () => [...document.querySelectorAll('svg')].flatMap((svg, s) => {
            const boxes = [...svg.querySelectorAll('text')].map(text => [text.textContent, text.getBBox()]);
            return boxes.flatMap(([one, a], i) => boxes.slice(i + 1)
                .filter(([, b]) => Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x) > 0.5
                    && Math.min(a.y + 0.8 * a.height, b.y + 0.8 * b.height) - Math.max(a.y + 0.2 * a.height, b.y + 0.2 * b.height) > 0.5)
                .map(([other]) => `picture ${s}: ${one} and ${other}`));
        })
        """;

    [ChromiumFact]
    public async Task Labels_never_touch_as_a_browser_sets_them()
    {
        var pictures = Enumerable.Range(0, Designs).SelectMany(Views).Select(view => view.ToString(SaveOptions.DisableFormatting)).ToList();
        var page = await chromium.NewPage();
        await page.SetContentAsync($"<style>{PageTemplate.ReadResource("page.css")}</style>{string.Concat(pictures)}");
        Assert.Equal(3 * Designs, await page.Locator("svg").CountAsync());
        Assert.Empty(await page.EvaluateAsync<string[]>(Touching));
    }

    private static IEnumerable<XElement> Views(int seed)
    {
        var random = new Random(seed);
        double Between(double low, double high) => low + (high - low) * random.NextDouble();
        var design = WorkedMachine.Geometry(Between(250, 700), Between(-80, 80), Between(-100, 600), Between(-8, 8))
            .With(GeometryInput.HubForward, Between(-0.7, 0.1)).With(GeometryInput.HubUp, Between(-0.2, 0.5));
        if (seed % 3 == 0)
            design = design with { HangHeightDifferenceMetres = Between(-0.03, 0.03), StrapDifferenceMetres = Between(-0.03, 0.03) };
        var (study, scale) = (ReportFixture.Study(), FrameScale.Of(WorkedMachine.Machine, [design]));
        return [FrameRearView.Of(study, design, scale), FrameTopView.Of(study, design, scale), FrameSideView.Of(study, design, scale)];
    }
}
