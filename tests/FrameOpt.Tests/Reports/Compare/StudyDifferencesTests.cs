using System.Text.Json;
using System.Text.Json.Nodes;
using FrameOpt.Model;
using FrameOpt.Reports.Compare;
using FrameOpt.Reports.Text;
using FrameOpt.Search;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.Tests.Reports.Compare;

public class StudyDifferencesTests
{
    [Fact]
    public void A_study_against_itself_has_no_differences() => Assert.Empty(Differences(Study(), Study()));

    [Fact]
    public void Each_single_change_of_a_value_is_told_once_with_the_old_and_the_new()
    {
        var (first, other) = (Study(), Study());
        var changed = 0;
        foreach (var leaf in RunJsonFolder.Leaves(other).Where(leaf => leaf.Key is not "name" and not "response").ToList())
        {
            var old = RunJsonFolder.Get(leaf)?.DeepClone();
            RunJsonFolder.Set(leaf, old?.GetValueKind() switch
            {
                JsonValueKind.Number => old.GetValue<double>() + 0.25,
                JsonValueKind.String => "something else",
                JsonValueKind.True => false,
                JsonValueKind.False => true,
                _ => 7.25,
            });
            // The unit of a response is a part of its name's meaning, told by no line of its own.
            if (leaf.Key != "unit" || leaf.Parent["response"] is null)
            {
                var difference = Assert.Single(Differences(first, other));
                Assert.NotEqual(difference.From, difference.To);
                Assert.Contains($"{difference.From} -> {difference.To}", difference.Text);
                if (leaf.Key == "value" && leaf.Parent["unit"]?.GetValue<string>() is "kg" or "m²" or "m/s" or "kg/m³" or "rpm")
                    Assert.All((string[])[difference.From!, difference.To!], text =>
                        Assert.Contains($" {leaf.Parent["unit"]!.GetValue<string>()}", text));
                changed++;
            }

            RunJsonFolder.Set(leaf, old);
        }

        Assert.InRange(changed, 100, int.MaxValue);
    }

    [Theory]
    [InlineData("{'mission':[{'name':'climb','weight':0.2}]}", "{'mission':[{'name':'climb','weight':0.35}]}",
        "mission: climb weight 0.2 -> 0.35")]
    [InlineData("{'machine':{'masses':[{'name':'pilot','mass':{'value':78,'unit':'kg'}}]}}",
        "{'machine':{'masses':[{'name':'pilot','mass':{'value':90,'unit':'kg'}}]}}", "machine: pilot mass 78 kg -> 90 kg")]
    [InlineData("{'machine':{'propeller':{'hub':{'right':{'value':0.02,'unit':'m'}}}}}",
        "{'machine':{'propeller':{'hub':{'right':{'value':-0.01,'unit':'m'}}}}}",
        "machine: propeller hub sideways 20 mm right of the datum -> 10 mm left of the datum")]
    [InlineData("{'wing':{'yaw_leverage':{'value':0.6}}}", "{'wing':{'yaw_leverage':{'value':0.9}}}", "wing: yaw leverage 0.6 -> 0.9")]
    [InlineData("{'wing':{'yaw_leverage':{'value':0.6}}}", "{'wing':{'yaw_leverage':{'roll':-0.67,'yaw':0.32}}}",
        "wing: yaw leverage 0.6 -> roll -0.67, yaw 0.32")]
    [InlineData("{'mission':[{'name':'a','fraction':0.5}]}", "{'mission':[{'name':'a','airspeed':{'value':12,'unit':'m/s'}}]}",
        "mission: a speed fraction 0.5 -> 12 m/s")]
    [InlineData("{'limits':[{'response':'body_yaw_worst','unit':'deg','at_most':4}]}",
        "{'limits':[{'response':'body_yaw_worst','unit':'deg','at_most':5}]}", "limits: body yaw worst at most 4 deg -> 5 deg")]
    [InlineData("{'limits':[]}", "{'limits':[{'response':'effort_worst','unit':'','at_most':0.9}]}",
        "limits: effort worst added (at most 0.9)")]
    [InlineData("{'mission':[{'name':'x','weight':1},{'name':'dash','weight':2}]}", "{'mission':[{'name':'x','weight':1}]}",
        "mission: dash removed (weight 2)")]
    [InlineData("{'factors':{'lateral_offset':{'unit':'mm','any_value_between':false,'levels':[0,5,10]}}}",
        "{'factors':{'lateral_offset':{'unit':'mm','any_value_between':false,'levels':[0,10]}}}",
        "factors: lateral offset 3 levels from 0 mm to 10 mm -> 2 levels from 0 mm to 10 mm")]
    [InlineData("{'baseline':{'lateral_offset':{'value':-25,'unit':'mm'}}}", "{'baseline':{'lateral_offset':{'value':1,'unit':'in'}}}",
        "baseline: lateral offset 25 mm to the pilot's left -> 1 in to the pilot's right")]
    [InlineData("{'strength':null}", "{'strength':{'limit_load_factor':3.5}}", "strength: none -> limit load factor 3.5")]
    [InlineData("{'title':'one'}", "{'title':'two'}", "title: one -> two")]
    public void A_difference_is_told_in_the_words_of_the_field(string first, string other, string words) =>
        Assert.Equal([words], Differences(JsonNode.Parse(first.Replace('\'', '"'))!, JsonNode.Parse(other.Replace('\'', '"'))!)
            .Select(difference => difference.Text));

    [Fact]
    public void A_table_with_a_row_more_is_told_whole_and_one_of_the_same_length_by_its_figures()
    {
        static JsonNode Polar(string rows) => JsonNode.Parse("""{"wing":{"polar":{"rows":[ROWS]}}}""".Replace("ROWS", rows))!;
        const string one = """{"fraction":0,"airspeed":{"value":10,"unit":"m/s"}}""",
            two = """{"fraction":1,"airspeed":{"value":14,"unit":"m/s"}}""",
            faster = """{"fraction":1,"airspeed":{"value":15,"unit":"m/s"}}""";
        Assert.Equal(["wing: polar row 2 airspeed 14 m/s -> 15 m/s"],
            Differences(Polar($"{one},{two}"), Polar($"{one},{faster}")).Select(difference => difference.Text));
        Assert.Contains("row 2", Assert.Single(Differences(Polar(one), Polar($"{one},{two}"))).To);
    }

    [Fact]
    public void Levels_that_differ_only_inside_are_told_to_the_last_digit()
    {
        static JsonNode Factor(double middle) =>
            JsonNode.Parse("""{"factors":{"lateral_offset":{"unit":"mm","any_value_between":false,"levels":[0,MIDDLE,10]}}}""".Replace(
            "MIDDLE", PlainNumber.Text(middle)))!;
        var difference = Assert.Single(Differences(Factor(4), Factor(6)));
        Assert.Contains("[0,4,10]", difference.From);
        Assert.Contains("[0,6,10]", difference.To);
    }

    private static JsonNode Study() => RunJsonFolder.Json(ReportFixture.Report(3))["study"]!;

    private static IReadOnlyList<StudyDifference> Differences(JsonNode first, JsonNode other) =>
        StudyDifferences.Of(Tree(first), Tree(other));

    private static StudyNode Tree(JsonNode study)
    {
        using var document = JsonDocument.Parse(study.ToJsonString());
        return StudyTree.Of(new RunJsonElement(document.RootElement, ""));
    }
}
