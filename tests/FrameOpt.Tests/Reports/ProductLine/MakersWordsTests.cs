using System.Globalization;
using System.Text.RegularExpressions;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.ProductLine;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.Tests.Running;

namespace FrameOpt.Tests.Reports.ProductLine;

/// <summary>The answer of the shipped line in a maker's words, against its customers' table.</summary>
public class MakersWordsTests
{
    private static readonly Lazy<ProductLineResult> shipped = new(
        () => ProductLineStudy.Solve(StudyReader.Read(Repository.Study("product-line")).Study!));

    private static readonly Lazy<RunAnswer> answer = new(() => ProductLineAnswer.Of(shipped.Value));

    [Fact]
    public void The_headline_counts_the_pieces_of_each_geometry()
    {
        var table = File.ReadLines(Path.Combine(Repository.Root, "studies", "product-line", "customers.csv")).Skip(1)
            .Select(line => int.Parse(line[(line.LastIndexOf(',') + 1)..], CultureInfo.InvariantCulture)).ToList();
        var said = Regex.Matches(answer.Value.Headline, @"\((\d+) pieces?\)").Select(match => int.Parse(match.Groups[1].Value)).ToList();
        Assert.Equal(3, said.Count);
        var alone = Regex.Match(answer.Value.Headline, @"No candidate serves (\d+) pieces?");
        Assert.Equal(table.Sum(), said.Sum() + int.Parse(alone.Groups[1].Value));
        for (var g = 0; g < 3; g++)
            Assert.Equal(said[g], shipped.Value.Assignments.Where(one => one.Geometry == g).SelectMany(one => one.Row.Customers)
                .Sum(customer => table[customer]));
    }

    [Fact]
    public void Who_is_served_worst_is_said_with_phase_lean_and_side() =>
        Assert.Matches(@"Worst served: .+: frame [ABC], .+: lean \d+ of 75 mm to the (left|right)", answer.Value.Headline);

    [Fact]
    public void Every_grey_span_of_the_chart_says_why()
    {
        var grey = shipped.Value.Chart.Blocks.SelectMany(block => block.Columns).SelectMany(column => column.Spans)
            .Count(span => span.Geometry < 0);
        Assert.Equal(grey, FittingChartReasons.Of(shipped.Value).Count(words => words.Contains("grey, because at ")));
        Assert.True(grey > 0);
    }

    [Fact]
    public void What_no_customer_has_is_not_in_the_chart()
    {
        var result = ProductLineStudy.Solve(ProductLineStudy.Read("objective: mean; up_to: 2"));
        Assert.Equal(4, result.Setting.Configurations.Count);
        var fewer = ProductLineStudy.Solve(ProductLineStudy.Read("objective: mean; up_to: 2",
            ProductLineStudy.Customers.Replace("engine: light, wing: large", "engine: big, wing: large")));
        Assert.Equal(["Not in the chart, because no customer has it: light, large."], FittingChartReasons.NotSold(fewer));
        Assert.Empty(FittingChartReasons.NotSold(result));
    }
}
