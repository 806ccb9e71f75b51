using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.ProductLine;
using FrameOpt.Search;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.Tests.Running;

namespace FrameOpt.Tests.StudyFile;

public class ProductLineReadingTests
{
    private const string Sample =
        "  customers: { sample: 50, seed: 3, pilot_mass: { mean: 80 kg, sd: 10 kg, from: 60 kg, to: 110 kg }, "
        + "engine: { light: 60 %, big: 40 % }, wing: { small: 1, large: 1 } }\n";

    [Fact]
    public void A_line_is_read_with_all_it_asks_for()
    {
        var line = ProductLineStudy.Read(
            "up_to: 4; objective: blend 30 %; response: residual[cruise]; common: frame; hole_pitch: 10 mm; "
                + "time: 2 min; pilot: clothing").Line!;
        Assert.Equal((2, 4, ProductLineCommon.Frame, 0.010, true), (
            line.Count, line.UpTo, line.Common, line.HolePitchMetres, line.FromGrid));
        Assert.Equal(TimeSpan.FromMinutes(2), line.Time);
        Check.Close(0.3, ((ProductLineObjective.Blend)line.Objective).WorstWeight, absolute: 1e-15, because: "30 % in binary");
        Assert.True(line.CostResponse is { Maximise: false, Magnitude: true });
        Assert.Equal(["engine", "wing"], line.Options.Select(option => option.Name));
        Assert.Equal(["light, small", "light, large", "big, small", "big, large"],
            line.Configurations.Select(configuration => configuration.Description));
        Assert.Equal(["school", "club", "north", "south", "heath"], line.Customers.Select(customer => customer.Name));
        Assert.Equal([0, 0, 2, 3, 1], line.Customers.Select(customer => customer.Configuration));
        Assert.Equal([9, 4, 3, 2, 1], line.Customers.Select(customer => customer.Share));
        Assert.All(line.Configurations, configuration => Assert.Equal("clothing", configuration.Pilot));
    }

    [Theory]
    [InlineData("mean", typeof(ProductLineObjective.Mean))]
    [InlineData("worst", typeof(ProductLineObjective.Worst))]
    [InlineData("percentile 90 %", typeof(ProductLineObjective.Percentile))]
    [InlineData("blend 0.3", typeof(ProductLineObjective.Blend))]
    public void Every_objective_is_read(string text, Type kind) =>
        Assert.IsType(kind, ProductLineStudy.Read($"objective: {text}").Line!.Objective);

    [Fact]
    public void What_a_line_does_not_say_is_listed_as_assumed()
    {
        var study = ProductLineStudy.Read("candidates: front");
        Assert.IsType<ProductLineObjective.Mean>(study.Line!.Objective);
        Assert.Equal((4, new Response.OfMission(MissionQuantity.ResidualRms)), (study.Line.UpTo, study.Line.CostResponse.Response));
        foreach (var what in new[] { "objective of the line", "response of the line", "common of the line", "time of the line" })
            Assert.Contains(study.Assumptions, assumption => assumption.What == what);
    }

    [Fact]
    public void An_outfit_is_the_study_with_every_choice_made_and_its_masses_add_up()
    {
        var line = ProductLineStudy.Read().Line!;
        var configuration = line.Configurations[3];
        Assert.Equal((1.35, 28.0), (configuration.Study.Machine.Propeller.DiameterMetres, configuration.Study.Wing.AreaSquareMetres));
        var machine = configuration.For(95).Machine;
        Check.Close(95 + 5 + 31 + 5.5, machine.MassKilograms, relative: 1e-15, because: "a sum of four numbers");
        Check.Close(95, machine.BodyMassKilograms, relative: 1e-15, because: "the pilot alone");
        Check.Close((95 * 0.020 + 5 * 0.020 - 31 * 0.280 - 5.5 * 0.220) / 136.5, machine.CentreOfGravity.ForwardMetres, relative: 1e-13,
            because: "a sum of four products");
    }

    [Fact]
    public void A_variant_may_change_the_line()
    {
        var text = ProductLineStudy.Text() + "variants: { three: { line: { variants: 3 } } }\n";
        Assert.Equal(3, StudyReader.Parse(System.Text.Encoding.UTF8.GetBytes(text), "study.yaml", "three").Study!.Line!.Count);
    }

    [Theory]
    [InlineData("objective: best", "Unknown objective of the product line.")]
    [InlineData("objective: percentile", "The percentile wants a share.")]
    [InlineData("objective: percentile 120 %", "line.objective, percentile must be above 0 and at most 100 %")]
    [InlineData("response: residul_rms", "There is no response `residul_rms`.")]
    [InlineData("response: body_pitch[cruise]", "may be below 0")]
    [InlineData("response: hang_point_load", "needs strength")]
    [InlineData("candidates: font", "has no choice `font`")]
    [InlineData("common: spacings", "has no choice `spacings`")]
    [InlineData("hole_pitch: 5", "5 has no unit")]
    [InlineData("hole_pitch: 0 mm", "must be above 0")]
    [InlineData("up_to: 1", "must be between 2 and 26")]
    [InlineData("time: 3", "has no unit")]
    [InlineData("pilot: pilt", "There is no mass named `pilt`")]
    [InlineData("varients: 3", "There is no key `varients`")]
    public void A_slip_of_a_key_is_one_mistake(string key, string what) =>
        Assert.Contains(what, WorkedStudyText.OneDiagnostic(ProductLineStudy.Text(key)).Message);

    [Theory]
    [InlineData("count: 9", "count: 0", "must be between 1 and")]
    [InlineData("count: 9", "count: 2.5", "is a whole number")]
    [InlineData("count: 9", "share: 0.5", "Some customers have a share and others a count")]
    [InlineData("pilot_mass: 62 kg", "pilot_mass: 620 kg", "must be between 20 kg and 250 kg")]
    [InlineData("pilot_mass: 62 kg", "pilot_mass: 62", "62 has no unit")]
    [InlineData("pilot_mass: 62 kg, engine: light", "engine: light", "line.customers[1].pilot_mass is missing")]
    [InlineData("engine: light, wing: small, count: 9", "wing: small, count: 9", "line.customers[1].engine is missing")]
    [InlineData("engine: light, wing: small, count: 9", "engine: ligt, wing: small, count: 9", "engine has no choice `ligt`")]
    [InlineData("count: 9", "cont: 9", "There is no key `cont`")]
    public void A_slip_of_a_customer_is_one_mistake(string piece, string slip, string what) =>
        Assert.Contains(what, WorkedStudyText.OneDiagnostic(ProductLineStudy.Text(
            customers: ProductLineStudy.Customers.Replace(piece, slip))).Message);

    [Theory]
    [InlineData("{ area: 22 m² }", "{ areaa: 22 m² }", "In wing `small`: There is no key `areaa`")]
    [InlineData("{ area: 22 m² }", "{ area: -22 m² }", "In wing `small`: wing.area must be")]
    [InlineData("{ wing: { area: 22 m² } }", "{ factors: { lateral_offset: 3 mm } }", "A choice of wing cannot change `factors`")]
    [InlineData("{ wing: { area: 22 m² } }", "{}", "The choice `small` of wing changes nothing")]
    [InlineData("frame and engine: { mass: 20 kg }", "frame: { mass: 20 kg }", "In engine `light`: There is no mass named `frame`")]
    public void A_slip_of_a_choice_is_one_mistake(string piece, string slip, string what)
    {
        Assert.Contains(piece, ProductLineStudy.Options);
        Assert.Contains(what, WorkedStudyText.OneDiagnostic(ProductLineStudy.Text(
            options: ProductLineStudy.Options.Replace(piece, slip))).Message);
    }

    [Theory]
    [InlineData("mean: 80 kg", "mean: 50 kg", "The mean does not lie between from and to.")]
    [InlineData("from: 60 kg", "from: 79.9 kg", null)]
    [InlineData("from: 60 kg, to: 110 kg", "from: 79.9 kg, to: 80.2 kg", "so close that hardly any draw")]
    [InlineData("sd: 10 kg, ", "", "line.customers.pilot_mass.sd is missing")]
    [InlineData("sample: 50", "sample: 1000000", "must be between 1 and 200000")]
    [InlineData("light: 60 %", "lihgt: 60 %", "engine has no choice `lihgt`")]
    [InlineData(", wing: { small: 1, large: 1 }", "", "line.customers.wing is missing")]
    [InlineData("{ small: 1, large: 1 }", "{ small: 0, large: 0 }", "No choice of wing has a share")]
    public void A_slip_of_a_sample_is_one_mistake(string piece, string slip, string? what)
    {
        Assert.Contains(piece, Sample);
        var text = ProductLineStudy.Text(customers: Sample.Replace(piece, slip));
        if (what is null)
            Assert.Equal(50, WorkedStudyText.Right(text).Line!.Customers.Count);
        else
            Assert.Contains(what, WorkedStudyText.OneDiagnostic(text).Message);
    }

    [Fact]
    public void Mistakes_of_the_line_are_told_together_with_all_others()
    {
        var text = ProductLineStudy.Text("objective: best; common: all").Replace("area: 25 m²", "area: 25");
        Assert.Equal(3, WorkedStudyText.Read(text).Diagnostics.Count);
    }

    [Fact]
    public void A_grid_of_too_many_designs_is_refused_with_the_factor_to_coarsen()
    {
        var diagnostic = WorkedStudyText.OneDiagnostic(
            WorkedStudyText.Text.TrimEnd() + "\nline: { variants: 2, candidates: grid, customers: [{ pilot_mass: 80 kg }] }\n");
        Assert.Contains("The grid has 198555 designs; 20000 is the most", diagnostic.Message);
        Assert.Contains("first of lateral_offset with its 61 levels", diagnostic.Fix);
    }

    [Fact]
    public void A_pitch_that_no_offset_meets_is_refused() => Assert.Contains(
        "No level of lateral_offset is a multiple",
        WorkedStudyText.OneDiagnostic(ProductLineStudy.Text("hole_pitch: 70 mm").Replace(
            "{ from: 0 mm, to: 60 mm, step: 5 mm }", "{ from: 5 mm, to: 60 mm, step: 5 mm }")).Message);
}
