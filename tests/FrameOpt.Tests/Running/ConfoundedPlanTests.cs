using FrameOpt.Plans;
using FrameOpt.Reports.Answer;
using FrameOpt.Running;
using FrameOpt.Studies;
using File = FrameOpt.Tests.StudyFile.WorkedStudyText;

namespace FrameOpt.Tests.Running;

/// <summary>Seven factors of the worked machine in eight runs.</summary>
public class ConfoundedPlanTests
{
    [Fact]
    public void Seven_swept_factors_in_eight_runs_are_confounded_as_in_the_saturated_fraction()
    {
        var study = File.Right(SevenFactors("kind: fractional factorial, most_runs: 8"));
        var plan = StudyPlan.Of(study, StudyProblem.Model(study));
        Assert.Equal(8, plan.Plan.Runs.Count);
        Assert.Equal(["hang_point_spacing", "lateral_offset", "suspension_height", "thrust_line_angle", "thrust_line_tilt", "hub_forward",
            "hub_up"], plan.Factors.Select(factor => factor.Name));
        Assert.Equal(3, plan.Fraction!.Resolution);
        // Box and Hunter 1961 (from memory): the 2^(7-4) of resolution III
        Assert.Equal([0, 0, 7, 7, 0, 0, 1], plan.Fraction.WordLengthPattern);
        Assert.Contains(PlanSections.AliasStructure(plan).Lines, line =>
            line.EndsWith("resolution 3; word-length pattern from length 3: 7, 7, 0, 0, 1.", StringComparison.Ordinal));
    }

    [Fact]
    public void The_alias_table_of_two_to_the_seven_less_four_is_the_published_one()
    {
        // Generators D=AB, E=AC, F=BC, G=ABC: words ABD ACE AFG BCF BEG CDG DEF, Box and Hunter 1961 (from memory); pairs follow from the
        // words.
        var study = File.Right(SevenFactors("kind: fractional factorial, generators: [D=AB, E=AC, F=BC, G=ABC]"));
        var plan = StudyPlan.Of(study, StudyProblem.Model(study));
        var words = plan.Fraction!.DefiningRelation.Select(word => word.ToString());
        Assert.Equal("ABD ACE AFG BCF BEG CDG DEF ABCG ABEF ACDF ADEG BCDE BDFG CEFG ABCDEFG".Split(' '), words);
        Assert.Equal(
            ["A = BD = CE = FG", "B = AD = CF = EG", "C = AE = BF = DG", "D = AB = CG = EF", "E = AC = BG = DF", "F = AG = BC = DE",
                "G = AF = BE = CD"],
            plan.Fraction.Aliases().Select(group => string.Join(" = ", group.Effects.Where(effect => effect.Length <= 2))));
        Assert.Contains(PlanSections.AliasStructure(plan).Table!.Rows, row =>
            row[0].StartsWith("A = BD = CE = FG = ", StringComparison.Ordinal));
    }

    private static string SevenFactors(string plan) =>
        StudyPlanTests.ShortGrid(File.Text).Replace("\nbaseline: ", "\n# ").Replace(
            "\nobjectives:",
            "  hub_forward: { values: [-450 mm, -400 mm] }\n  hub_up: { values: [100 mm, 140 mm] }\n"
                + "  thrust_line_tilt: { values: [3 deg, 7 deg] }\n\nobjectives:")
        + $"plan: {{ {plan} }}\n";
}
