using System.Diagnostics;
using FrameOpt.StudyFile;

namespace FrameOpt.Tests.StudyFile;

/// <summary>Whatever a study says, reading it ends soon: what is beyond a bound is refused with the bound and its place.</summary>
public class BoundsTests
{
    // The promise is two seconds; a machine that runs the other tests beside this one is given some more.
    private static readonly TimeSpan patience = TimeSpan.FromSeconds(6);

    public static TheoryData<string, string> Beyond => new()
    {
        { Mission(101), "The mission has 106 phases; 100 is the most." },
        { Mission(10_000), "more than 60000 keys and values" },
        { Values(10_001), "10001 values; 10000 is the most" },
        { Values(70_000), "more than 60000 keys and values" },
        { WorkedStudyText.With("step: 1 mm", "step: 0.0001 mm"), "600000 levels; 100000 is the most" },
        { WorkedStudyText.With("limits:\n", "limits:\n" + Repeated("  - { response: effort_worst, at_most: 0.6 }\n", 51)),
            "There are 53 limits; 50 is the most." },
        { WorkedStudyText.With("  hang_line:", string.Concat(Enumerable.Range(0, 100)
            .Select(i => $"    - {{ name: m{i}, mass: 1 kg, forward: 0 m, right: 0 m, up: 0 m }}\n")) + "  hang_line:"),
            "masses; 100 is the most." },
        { WorkedStudyText.With("minimise: residual_rms", "minimise: " + new string('x', 480_000)), "There is no response" },
        { WorkedStudyText.Text + "plan: { kind: full factorial, levels: 21 }\n", "the full factorial has 194481 runs; at most 10000" },
        { WorkedStudyText.Text + "plan: { kind: D-optimal, runs: 14 }\n", "the model has 15 terms" },
    };

    [Theory]
    [MemberData(nameof(Beyond))]
    public void What_is_beyond_a_bound_is_refused_soon(string text, string what)
    {
        var clock = Stopwatch.StartNew();
        var reading = WorkedStudyText.Read(text);
        Assert.True(clock.Elapsed < patience, $"took {clock.Elapsed.TotalSeconds:0.0} s");
        Assert.Null(reading.Study);
        Assert.Contains(reading.Diagnostics, diagnostic => diagnostic.Message.Contains(what) && diagnostic.Line > 0);
    }

    [Theory]
    [InlineData("D-optimal")]
    [InlineData("I-optimal")]
    public void A_large_optimal_plan_is_counted_and_not_built(string kind)
    {
        var clock = Stopwatch.StartNew();
        Assert.NotNull(WorkedStudyText.Right(WorkedStudyText.Text + $"plan: {{ kind: {kind}, runs: 400 }}\n").Plan);
        Assert.True(clock.Elapsed < patience, $"took {clock.Elapsed.TotalSeconds:0.0} s");
    }

    [Fact]
    public void Sixty_phases_and_ten_thousand_values_are_read()
    {
        Assert.Equal(60, WorkedStudyText.Right(Mission(55)).Mission.Count);
        Assert.Equal(10_000, WorkedStudyText.Right(Values(10_000).Replace("method: exhaustive", "method: NSGA-II"))
            .Factors.Max(factor => factor.LevelsSi.Count));
    }

    [Theory]
    [InlineData("60 kgf", "1e308 kgf")]
    [InlineData("rpm: 2600 rpm", "rpm: 1e-160 rpm")]
    [InlineData("torque: 56.5 N·m", "power: 1e308 hp")]
    [InlineData("0.74 kg/l", "1e308 kg/l")]
    public void Numbers_that_no_conversion_holds_are_refused_in_their_place(string piece, string other)
    {
        var text = File.ReadAllText(Repository.Study("custom-match"));
        Assert.Contains(piece, text);
        var mistake = Assert.Single(WorkedStudyText.Read(text.Replace(piece, other)).Diagnostics);
        Assert.Matches("too large|too close to 0", mistake.Message);
        Assert.EndsWith(mistake.Excerpt, other);
    }

    private static string Mission(int more) => WorkedStudyText.With("mission:\n",
        "mission:\n" + string.Concat(Enumerable.Range(0, more).Select(i => $"  p{i}: {{ weight: 0.1, power: level }}\n")));

    private static string Values(int count) => WorkedStudyText.With("[-3 deg, -1.5 deg, 0 deg, 1.5 deg, 3 deg]",
        $"[{string.Join(", ", Enumerable.Range(1, count).Select(i => FormattableString.Invariant($"{i / 9000.0:0.#####} deg")))}]");

    private static string Repeated(string text, int times) => string.Concat(Enumerable.Repeat(text, times));
}
