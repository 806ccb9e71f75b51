using FrameOpt.Analysis;
using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.Tests.Reports;

namespace FrameOpt.Tests.StudyFile;

/// <summary>What a study may leave out, what is taken instead, and that it is listed.</summary>
public class DefaultsTests
{
    [Fact]
    public void Mission_without_engine_off_gets_a_glide()
    {
        var study = WorkedStudyText.Right(WorkedStudyText.With("  glide:  ", "  # ").Replace(
            "level, altitude: 300 m", "level, altitude: 500 m"));
        Assert.Equal(new Phase("glide", 0, new FlightSpeed.AtFraction(0), new PhasePower.EngineOff(), 500), study.Mission[^1]);
        Assert.Contains("cruise", Listed(study, "phase glide").Source);
    }

    [Fact]
    public void Glide_that_is_added_avoids_a_name_that_is_taken()
    {
        var study = WorkedStudyText.Right(WorkedStudyText.With("power: engine off", "power: level"));
        Assert.Equal("glide, engine off", study.Mission[^1].Name);
    }

    [Fact]
    public void Phase_that_says_nothing_of_the_air_is_at_sea_level_at_trim()
    {
        var study = WorkedStudyText.Right(WorkedStudyText.With("power: level, altitude: 300 m", "power: level"));
        Assert.Equal(new Phase("cruise", 0.55, new FlightSpeed.AtFraction(0), new PhasePower.Level()), study.Mission[2]);
        Assert.Equal("0 m", Listed(study, "altitude in cruise").Value);
    }

    [Fact]
    public void Tilt_and_inertia_left_out_are_listed()
    {
        var study = WorkedStudyText.Right(WorkedStudyText.With("    tilt: 5 deg", "    #").Replace("    polar_inertia:", "    #"));
        Assert.Equal(0, study.Machine.Propeller.TiltRadians);
        Assert.Equal(0, study.Machine.Propeller.PolarInertia);
        Assert.Equal("0 deg", Listed(study, "tilt of the thrust line").Value);
        Assert.Contains("gyroscopic", Listed(study, "polar inertia of the propeller").Source);
    }

    [Fact]
    public void Ranking_and_search_left_out_are_listed()
    {
        var study = WorkedStudyText.Right(WorkedStudyText.With("ranking: {", "# {").Replace("search: {", "# {").Replace(
            "baseline: {", "# {"));
        Assert.Equal(RankingMethod.DistanceToIdeal, study.Ranking.Method);
        Assert.Equal([1, 1, 1], study.Ranking.Weights);
        Assert.Equal("1 for each objective", Listed(study, "ranking weights").Value);
        Assert.Null(study.Baseline);
    }

    [Fact]
    public void Fuel_may_be_given_by_volume_and_density()
    {
        // 6 l at 0.75 kg/l is 4.5 kg.
        foreach (var density in new[] { "0.75 kg/l", "750 kg/m³", "750 kg/m3" })
            Check.Close(4.5, WorkedStudyText.Right(WorkedStudyText.With("mass: 5.5 kg", $"volume: 6 l, density: {density}")).Machine.Masses[
                3].MassKilograms, relative: 1e-14, because: "rounding of one product");
    }

    [Fact]
    public void Hub_in_front_of_the_body_is_a_warning_with_its_line()
    {
        var study = WorkedStudyText.Right(WorkedStudyText.With("hub: { forward: -420 mm", "hub: { forward: 420 mm"));
        Assert.Contains(study.Warnings, warning => warning.StartsWith(
            "study.yaml line 16: the distance of the propeller hub behind the pilot's body is -400 mm; 200 to 1000 mm is usual",
            StringComparison.Ordinal));
    }

    // Worked balance: at this mass and height trim is 10.73 m/s and the top 14.04 m/s (References/README.md); the polar does not check full
    // throttle.
    [Theory]
    [InlineData("15 m/s", "the airspeed of launch, 15.0 m/s, lies above the wing's top speed there, 14.0 m/s.")]
    [InlineData("6.4 m/s", "the airspeed of launch, 6.4 m/s, lies below 0.6 of the wing's trim speed there, 10.7 m/s.")]
    public void An_airspeed_no_wing_flies_is_a_warning_with_its_line(string airspeed, string warning)
    {
        var study = WorkedStudyText.Right(WorkedStudyText.With("airspeed: 8.5 m/s", $"airspeed: {airspeed}"));
        Assert.Contains($"study.yaml line 47: {warning}", study.Warnings);
    }

    private static Assumption Listed(Study study, string what) => Assert.Single(study.Assumptions, assumption => assumption.What == what);
}
