using System.Globalization;
using FrameOpt.Cli;
using FrameOpt.Fit;
using FrameOpt.Forms;
using FrameOpt.Model;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.Tests.Cli;
using Xunit.Abstractions;

namespace FrameOpt.Tests.Fit.Measuring;

/// <summary>Hidden machines, measured with errors and found again.</summary>
public sealed class RecoveryTests(ITestOutputHelper output) : IDisposable
{
    private static readonly string path = Repository.Study("custom-match");
    private static readonly Study study = StudyReader.Read(path).Study!;
    private static readonly FrameGeometry built = FrameGeometry.On(study.Machine, 0.440, -0.020, 0.200, 0);
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_form_filled_from_a_hidden_machine_corrects_the_study_towards_it()
    {
        var hidden = new HiddenMachine(study, 2026);
        Assert.Equal(ExitCode.Success, Run("form", path, "--set", "lateral_offset=-20 mm", "--out", folder["form.csv"]));
        File.WriteAllText(folder["filled.csv"], hidden.Fill(File.ReadAllText(folder["form.csv"]), built));
        Assert.Equal(ExitCode.Success, Run("fit", path, "--set", "lateral_offset=-20 mm", "--measured", folder["filled.csv"],
            "--out", folder["corrected.yaml"]));
        var corrected = StudyReader.Read(folder["corrected.yaml"]).Study!;
        var (truth, off) = (NextHole(hidden.State.Case.In(StudyProblem.Model(study))), hidden.State.Case.BuiltOff.OffsetMetres);
        var (before, after) = (NextHole(StudyProblem.Model(study)), NextHole(StudyProblem.Model(corrected)));
        output.WriteLine($"best offset: study {1000 * before:0.0} mm, corrected {1000 * after:0.0} mm, true {1000 * (truth - off):0.0} mm");
        Assert.True(Math.Abs(after - truth) < Math.Abs(before - truth));
    }

    [Fact]
    public void What_is_known_after_a_form_holds_in_95_of_100_machines()
    {
        var runs = MeasurementForm.Candidates(study, built).Where(run => run is not MeasuredRun.Flight { Flown.OffsetMetres: not -0.020 })
            .ToList();
        var numbers = MeasuredNumber.Of(study);
        var repeats = int.Parse(Environment.GetEnvironmentVariable("FRAMEOPT_REPEATS") ?? "60", CultureInfo.InvariantCulture);
        var (covered, told) = (new int[numbers.Count], new double[numbers.Count]);
        Parallel.For(0, repeats, repeat =>
        {
            var hidden = new HiddenMachine(study, (uint)repeat);
            var fit = MeasuredFit.Of(study, [.. runs.Select(hidden.Read)]);
            lock (covered)
            {
                for (var i = 0; i < numbers.Count; i++)
                {
                    var known = fit.Least.Unknowns[i];
                    covered[i] += Math.Abs(known.Value - hidden.Off[i]) < 1.96 * known.StandardDeviation ? 1 : 0;
                    told[i] += fit.SpreadLeft(i) / repeats;
                }
            }
        });
        var learnt = Enumerable.Range(0, numbers.Count).Where(i => told[i] < 0.9).ToList();
        foreach (var i in learnt)
            output.WriteLine($"{numbers[i].Title}: spread left {told[i]:0.00}, {covered[i]} of {repeats} within their 95 % interval");
        var share = learnt.Average(i => covered[i] / (double)repeats);
        output.WriteLine($"all of them: {100 * share:0.0} %");
        Assert.True(learnt.Count > 5);
        // Binomial with n draws of 0.95; a number between bounds is covered more often. docs/measure.md tells the figure for 500.
        var deviation = Math.Sqrt(0.95 * 0.05 / repeats);
        Assert.InRange(share, 0.95 - 2 * deviation, 0.95 + 2 * deviation);
        Assert.All(learnt, i => Assert.True(covered[i] > repeats * (0.95 - 4 * deviation), numbers[i].Title));
    }

    [Fact]
    public void The_shipped_form_was_filled_by_this_script()
    {
        // studies/custom-match/measured.csv: invented, from the hidden machine of seed 2026.
        Assert.Equal(ExitCode.Success, Run("form", path, "--set", "lateral_offset=-20 mm", "--out", folder["form.csv"]));
        var filled = new HiddenMachine(study, 2026).Fill(File.ReadAllText(folder["form.csv"]), built);
        var shipped = Path.Combine(Repository.Root, "studies", "custom-match", "measured.csv");
        if (Environment.GetEnvironmentVariable("FRAMEOPT_WRITE_FORM") is not null)
            File.WriteAllText(shipped, filled);
        Assert.Equal(filled, File.ReadAllText(shipped));
    }

    /// <summary>The offset of least residual torque over the settled phases, found here by trying a thousand of them.</summary>
    private static double NextHole(FrameOpt.Model.Mission.MissionModel model) => Enumerable.Range(-500, 1001).Select(i => i * 1e-4)
        .MinBy(offset => model.Evaluate(built with { OffsetMetres = offset }) is { Failure: null } design
            ? design.Phases.Where(phase => phase.Phase.IsSettled)
                .Sum(phase => phase.Phase.Weight * Math.Pow(phase[FrameOpt.Model.Mission.PhaseQuantity.Residual], 2))
            : double.PositiveInfinity);

    private int Run(params string[] args)
    {
        var terminal = new TestTerminal();
        var code = terminal.Run(args);
        output.WriteLine(terminal.Output);
        output.WriteLine(terminal.Error);
        return code;
    }
}
