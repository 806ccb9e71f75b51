using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.StudyFile;

namespace FrameOpt.Tests.Running;

public class FittingChartTests
{
    private static readonly Lazy<ProductLineResult> shipped = new(
        () => ProductLineStudy.Solve(StudyReader.Read(Repository.Study("product-line")).Study!));

    [Fact]
    public void The_fitting_chart_has_the_best_allowed_geometry_for_every_whole_kilogram()
    {
        var (result, line) = (shipped.Value, shipped.Value.Setting);
        var candidates = ProductLineCandidates.OfGrid(result.Study).Only(result.Geometries.Select(geometry => geometry.Candidate));
        var byOutfit = result.Chart.Blocks.SelectMany(block => block.Columns.Select(column => (block, column))).ToList();
        Assert.Equal(["light single", "big single", "light single", "big single"], byOutfit.Select(pair => pair.column.Name));
        foreach (var (block, column) in byOutfit)
        {
            var configuration = line.Configurations.Single(any => any.Choices[0] == column.Name && $"wing {any.Choices[1]}" == block.Title);
            Assert.Equal((result.Chart.LightestKilograms, result.Chart.HeaviestKilograms),
                (column.Spans[0].FromKilograms, column.Spans[^1].ToKilograms));
            foreach (var span in column.Spans)
            {
                for (var kilograms = span.FromKilograms; kilograms <= span.ToKilograms; kilograms++)
                {
                    var costs = new double[candidates.Count];
                    new ProductLineCosts(line, candidates).Fill(configuration, kilograms, costs);
                    if (span.Geometry < 0)
                        Assert.All(costs, cost => Assert.True(double.IsInfinity(cost)));
                    else
                        Assert.Equal(costs.Min(), costs[candidates.Designs.ToList().IndexOf(result.Geometries[span.Geometry].Design)]);
                }
            }
        }
    }

    [Fact]
    public void An_option_that_makes_no_difference_makes_no_blocks()
    {
        const string options =
            "  options:\n    engine:\n      light: { machine: { masses: { frame and engine: { mass: 20 kg } } } }\n"
            + "      big: { machine: { masses: { frame and engine: { mass: 31 kg } } } }\n"
            + "    sticker:\n      red: { strength: { limit_load_factor: 6, overhang: 100 mm } }\n"
            + "      blue: { strength: { limit_load_factor: 5, overhang: 100 mm } }\n";
        const string customers =
            "  customers:\n    - { pilot_mass: 70 kg, engine: light, sticker: red }\n"
            + "    - { pilot_mass: 90 kg, engine: big, sticker: blue }\n";
        var block = Assert.Single(ProductLineStudy.Solve(ProductLineStudy.Read(customers: customers, options: options)).Chart.Blocks);
        Assert.Equal(("", 2), (block.Title, block.Columns.Count));
    }
}
