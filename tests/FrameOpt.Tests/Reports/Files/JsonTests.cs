using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Files;
using FrameOpt.Studies;
using FrameOpt.StudyFile;

namespace FrameOpt.Tests.Reports.Files;

public partial class JsonTests
{
    private static IReadOnlyList<DesignValue> Built =>
        [.. ReportFixture.Study().Factors.Select(factor => new DesignValue(
            factor with { LevelsSi = [ReportFixture.WorkedGeometry[factor.Input]] }, "as set"))];

    [Fact]
    public void An_evaluation_has_design_phases_and_mission_with_units()
    {
        var report = ReportFixture.Report(1);
        var json = Parse(stream => EvaluationJson.Write(report.FrontEvaluations[0], [], report.Result.Study, Built, null, stream));
        Assert.Equal(25, json.GetProperty("design").GetProperty("lateral_offset").GetProperty("value").GetDouble());
        Assert.Equal("mm", json.GetProperty("design").GetProperty("lateral_offset").GetProperty("unit").GetString());
        var cruise = json.GetProperty("phases").GetProperty("cruise");
        Check.Close(-0.4346778, cruise.GetProperty("residual").GetProperty("value").GetDouble(), absolute: 1e-4,
            because: "tolerance of the worked balance for values small by cancellation, References/README.md");
        Assert.Equal("N·m", cruise.GetProperty("residual").GetProperty("unit").GetString());
        Assert.Equal("straight", cruise.GetProperty("steers").GetProperty("value").GetString());
        Assert.Equal("N·m", json.GetProperty("mission").GetProperty("residual_rms").GetProperty("unit").GetString());
        var effort = json.GetProperty("limits")[1];
        Assert.Equal("effort_worst at most 0.455", effort.GetProperty("limit").GetString());
        Check.Close(36.21829 / 80, effort.GetProperty("value").GetProperty("value").GetDouble(), relative: 1e-5,
            because: "lean over largest lean of the glide, digits of the worked balance");
        Assert.True(effort.GetProperty("kept").GetBoolean());
    }

    [Fact]
    public void What_is_not_finite_is_null()
    {
        var report = ReportFixture.Report(1);
        var unbounded = report.FrontEvaluations[0].With(0, PhaseQuantity.TwistMargin, double.PositiveInfinity)
            .With(1, PhaseQuantity.Lean, double.PositiveInfinity).With(1, PhaseQuantity.Effort, double.PositiveInfinity);
        var json = Parse(stream => EvaluationJson.Write(unbounded, [], report.Result.Study, Built, null, stream));
        Assert.Equal(JsonValueKind.Null, json.GetProperty("phases").GetProperty("launch").GetProperty("twist_margin")
            .GetProperty("value").ValueKind);
        foreach (var name in new[] { "lean", "effort" })
            Assert.Equal(JsonValueKind.Null, json.GetProperty("phases").GetProperty("climb").GetProperty(name)
                .GetProperty("value").ValueKind);
        Assert.Equal(JsonValueKind.Null, json.GetProperty("mission").GetProperty("hang_point_load").GetProperty("value").ValueKind);
    }

    [Fact]
    public void A_design_that_cannot_fly_gives_its_reason()
    {
        var failing = ReportFixture.Failing(ReportFixture.WorkedGeometry, FailureKind.SlackRiser, 2);
        var json = Parse(stream => EvaluationJson.Write(failing, [], ReportFixture.Study(), Built, null, stream));
        Assert.StartsWith("cruise: a riser goes slack", json.GetProperty("failure").GetString());
        Assert.Empty(json.GetProperty("phases").EnumerateObject());
    }

    [Fact]
    public void Run_json_holds_the_study_the_answer_and_the_front()
    {
        var json = Parse(stream => RunJson.Write(ReportFixture.Report(12), stream));
        Assert.Equal(0, json.GetProperty("seed").GetInt64());
        Assert.True(json.GetProperty("complete").GetBoolean());
        Assert.Equal(198_555, json.GetProperty("counts").GetProperty("evaluated").GetInt64());
        Assert.Equal(12, json.GetProperty("front").GetProperty("rows").GetArrayLength());
        Assert.Equal(json.GetProperty("front").GetProperty("columns").GetArrayLength(),
            json.GetProperty("front").GetProperty("rows")[0].GetArrayLength());
        Assert.Equal(61, json.GetProperty("study").GetProperty("factors").GetProperty("lateral_offset")
            .GetProperty("levels").GetArrayLength());
        Assert.Equal(7, json.GetProperty("study").GetProperty("machine").GetProperty("propeller")
            .GetProperty("coefficients").GetArrayLength());
        Assert.Equal(
            ["low leverage", "as in the study", "high leverage", "soft coupling", "stiff coupling"],
            json.GetProperty("wing_scenarios").EnumerateArray().Select(scenario => scenario.GetProperty("wing").GetString()));
        Assert.True(json.GetProperty("assumptions").GetArrayLength() > 1);
        Assert.True(json.GetProperty("cautions").GetArrayLength() > 1);
    }

    [Fact]
    public void No_number_has_an_exponent()
    {
        var report = ReportFixture.Report(12);
        var tiny = report.FrontEvaluations[0].With(0, PhaseQuantity.Residual, 1.5e-9).With(1, PhaseQuantity.Residual, 1e22);
        var text = Encoding.UTF8.GetString(Bytes(stream => RunJson.Write(
            report with { Result = report.Result with { Chosen = tiny } }, stream)));
        Assert.Contains("0.0000000015", text);
        Assert.DoesNotMatch(NumberWithExponent(), text);
    }

    [Fact]
    public void The_same_run_gives_the_same_bytes() =>
        Assert.Equal(Bytes(stream => RunJson.Write(ReportFixture.Report(30), stream)),
            Bytes(stream => RunJson.Write(ReportFixture.Report(30), stream)));

    [Fact]
    public void Hostile_names_leave_valid_JSON_with_the_names_in_it()
    {
        const string name = "\"}],<script> \\ 飛行 🪂";
        var json = Parse(stream => RunJson.Write(ReportFixture.Report(2, ReportFixture.Study(name, name, name)), stream));
        Assert.Equal(name, json.GetProperty("study").GetProperty("title").GetString());
        Assert.True(json.GetProperty("chosen").GetProperty("phases").TryGetProperty(name, out _));
    }

    [Fact]
    public void A_run_with_nothing_feasible_has_null_for_its_choice()
    {
        var json = Parse(stream => RunJson.Write(new RunReport(ReportFixture.NothingFeasible(null), ReportFixture.Info, []), stream));
        Assert.Equal(JsonValueKind.Null, json.GetProperty("chosen").ValueKind);
        Assert.Equal(0, json.GetProperty("front").GetProperty("rows").GetArrayLength());
    }

    [Fact]
    public void Timings_stand_apart()
    {
        var json = Parse(stream => TimingsJson.Write(ReportFixture.Timings, stream));
        Assert.Equal("2030-01-02T03:04:05Z", json.GetProperty("started_utc").GetString());
        Assert.Equal(0.25, json.GetProperty("search").GetProperty("value").GetDouble());
    }

    private static byte[] Bytes(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return stream.ToArray();
    }

    private static JsonElement Parse(Action<Stream> write) => JsonDocument.Parse(Bytes(write)).RootElement;

    [GeneratedRegex(@"[:\[,]\s*-?\d+(\.\d+)?[eE]")]
    private static partial Regex NumberWithExponent();
}
