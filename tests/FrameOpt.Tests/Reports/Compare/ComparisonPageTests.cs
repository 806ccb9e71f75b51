using System.Text;
using System.Xml.Linq;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Compare;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Reports.Compare;

public sealed class ComparisonPageTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_page_holds_every_word_needs_no_script_and_lets_nothing_act()
    {
        var (first, other) = (RunJsonFolder.Write(folder, "first", ReportFixture.Report()),
            RunJsonFolder.Write(folder, "other", ReportFixture.Report(12, ReportFixture.Study("Another", "dash"))));
        var comparison = RunJsonFolder.Read(first, $"{first}:2", other);
        var page = new PageText(ComparisonPage.Of(comparison));
        foreach (var section in ComparisonSections.Of(comparison))
            Assert.All([.. section.Lines.Where(line => line != Cautions.FirstPage[0]), .. section.Table?.Headers ?? [],
                .. section.Table?.Rows.SelectMany(row => row).Where(cell => cell.Length > 0) ?? []], text =>
                Assert.Contains(text, page.Words));
        Assert.Empty(page.Scripts);
        var hash = Convert.ToBase64String(System.Security.Cryptography.SHA256.HashData(Encoding.UTF8.GetBytes(page.Style)));
        var policy = page.Tree.Descendants("meta").Single(meta => meta.Attribute("http-equiv") is not null).Attribute("content")!.Value;
        Assert.Equal($"default-src 'none'; style-src 'sha256-{hash}'; base-uri 'none'; form-action 'none'", policy);
        Assert.DoesNotContain(page.Tree.Descendants().Attributes(), attribute =>
            attribute.Name == "style" || attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        Assert.All(page.Tree.Descendants().Attributes().Where(attribute => attribute.Name.LocalName is "href" or "src"), link =>
            Assert.StartsWith("#", link.Value));
        var ids = page.Tree.Descendants().Attributes("id").Select(id => id.Value).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        // Three frames and the bars, each with words for those who do not see it.
        var pictures = page.Tree.Descendants("svg").ToList();
        Assert.Equal(4, pictures.Count);
        Assert.All(pictures, picture => Assert.All(picture.Attribute("aria-labelledby")!.Value.Split(' '), id =>
            Assert.NotEmpty(page.ById(id).Value)));
        Assert.Equal("h1", page.Tree.Descendants().First(element => element.Name.LocalName is "h1" or "h2" or "h3").Name.LocalName);
    }

    [Fact]
    public void Bars_stand_left_or_right_of_the_middle_in_the_proportion_of_the_residuals()
    {
        var run = RunJsonFolder.Write(folder, "run", ReportFixture.Report());
        var comparison = RunJsonFolder.Read(run, $"{run}:5");
        var bars = new PageText(ComparisonPage.Of(comparison)).ById("bars");
        var middle = PageText.Number(PageText.Of(bars, "zero").Single(), "x1");
        var perNewtonMetre = new List<double>();
        foreach (var (c, column) in comparison.Columns.Index())
        {
            // The first of each look is its key.
            var drawn = PageText.Of(bars, $"bar-{c + 1}").Skip(1).ToList();
            Assert.Equal(column.Phases.Count, drawn.Count);
            foreach (var (residual, bar) in column.Phases.Select(phase => phase[PhaseQuantity.Residual]).Zip(drawn)
                .Where(pair => Math.Abs(pair.First) > 1))
            {
                Check.Close(middle, PageText.Number(bar, "x") + (residual < 0 ? PageText.Number(bar, "width") : 0),
                    absolute: 0.11, because: "coordinates are rounded to a tenth");
                perNewtonMetre.Add(PageText.Number(bar, "width") / Math.Abs(residual));
            }
        }

        Assert.All(perNewtonMetre, scale => Check.Close(perNewtonMetre[0], scale, absolute: 0.12,
            because: "widths are rounded to a tenth, of residuals above 1"));
    }

    [Fact]
    public void A_user_s_text_stays_text_on_the_page_and_no_formula_in_the_table()
    {
        const string title = "=cmd|' /C calc'!A0", pilot = "</style><script>alert(1)</script>";
        var first = RunJsonFolder.Write(folder, "first", ReportFixture.Report(2));
        var other = RunJsonFolder.Write(folder, "other", ReportFixture.Report(2, ReportFixture.Study(title, null, pilot)));
        var comparison = RunJsonFolder.Read(first, other);
        var page = new PageText(ComparisonPage.Of(comparison));
        Assert.Empty(page.Scripts);
        Assert.DoesNotContain("<script", page.Raw);
        Assert.Contains(page.Words, words => words.Contains(pilot, StringComparison.Ordinal));
        using var stream = new MemoryStream();
        ComparisonTable.Write(comparison, stream);
        Assert.Contains($"'{title}", Encoding.UTF8.GetString(stream.ToArray()));
        Assert.DoesNotMatch("(^|,|\n)\"?=", Encoding.UTF8.GetString(stream.ToArray()));
    }
}
