using FrameOpt.Cli;
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
