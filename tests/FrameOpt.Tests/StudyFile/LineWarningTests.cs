using FrameOpt.Tests.Running;

namespace FrameOpt.Tests.StudyFile;

/// <summary>What is allowed in a line and hardly meant.</summary>
public class LineWarningTests
{
    private const string Height = "suspension_height: 250 mm";

    // The study has spacings of 420 to 460 mm and offsets of 0 to 60 mm.
    [Theory]
    [InlineData("{ name: A, hang_point_spacing: 440 mm, lateral_offset: 20 mm, H }, { name: B2, left_hole: 200 mm, right_hole: 240 mm, H }",
        "the geometries A and B2 have the same dimensions, so that nobody needs B2.")]
    [InlineData("{ name: A, hang_point_spacing: 410 mm, lateral_offset: 20 mm, H }",
        "hang_point_spacing of the geometry A is 410 mm, outside the study's range, 420 mm to 460 mm.")]
    [InlineData("{ name: A, hang_point_spacing: 440 mm, lateral_offset: -5 mm, H }",
        "lateral_offset of the geometry A is -5 mm, outside the study's range, 0 mm to 60 mm.")]
    [InlineData("{ name: A, hang_point_spacing: 440 mm, lateral_offset: 22 mm, H }",
        "lateral_offset of the geometry A is 22 mm, no multiple of hole_pitch")]
    public void A_geometry_that_is_hardly_meant_is_named(string geometries, string warning)
    {
        var study = ProductLineStudy.Read(
            $"hole_pitch: {(warning.Contains("hole_pitch") ? 10 : 5)} mm; geometries: [{geometries.Replace("H", Height)}]");
        Assert.Contains(warning, Assert.Single(study.Warnings, text => text.Contains("geometr")));
    }

    [Fact]
    public void Geometries_of_the_grid_that_differ_give_no_warning() => Assert.DoesNotContain(ProductLineStudy.Read(
        $"geometries: [{{ name: A, hang_point_spacing: 440 mm, lateral_offset: 20 mm, {Height} }}, {{ name: B, hang_point_spacing: 440 mm, "
        + $"lateral_offset: 25 mm, {Height} }}]").Warnings, text => text.Contains("geometr"));

    [Theory]
    [InlineData("name: club,", "name: School,", "several customers have the name school: tables and cards do not tell them apart.")]
    [InlineData("pilot_mass: 62 kg", "pilot_mass: 30 kg",
        "the mass of the pilot's body of the customer school is 30 kg; 40 to 200 kg is usual")]
    public void Customers_that_are_hardly_meant_are_named(string piece, string other, string warning)
    {
        var study = ProductLineStudy.Read(customers: ProductLineStudy.Customers.Replace(piece, other));
        Assert.Contains(study.Warnings, text => text.Contains(warning, StringComparison.OrdinalIgnoreCase));
    }
}
