using System.Diagnostics;
using FrameOpt.Running;
using FrameOpt.StudyFile;
using FrameOpt.Tests.Reports;
using FrameOpt.Tests.Running;

namespace FrameOpt.Tests.StudyFile.Syntax;

/// <summary>Pipes, devices, links to them, and files of nothing but separators: each is refused at once, none is waited for.</summary>
public sealed class SpecialFileTests : IDisposable
{
    private static readonly TimeSpan patience = TimeSpan.FromSeconds(2);

    private readonly TemporaryFolder folder = new();

    public static TheoryData<string> Kinds => ["pipe", "device", "link to a pipe", "link to a device", "folder"];

    public void Dispose() => folder.Dispose();

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_study_is_a_regular_file(string kind)
    {
        if (Make(kind, "study.yaml"))
            Assert.Single(AtOnce(() => StudyReader.Read(folder["study.yaml"])).Diagnostics);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Customers_stand_in_a_regular_file(string kind)
    {
        File.WriteAllText(folder["study.yaml"], ProductLineStudy.Text(customers: "  customers: customers.csv\n"));
        if (Make(kind, "customers.csv"))
            Assert.Contains("customers.csv", Assert.Single(AtOnce(() => StudyReader.Read(folder["study.yaml"])).Diagnostics).Message);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_start_is_a_regular_file(string kind)
    {
        File.WriteAllText(folder["study.yaml"], WorkedStudyText.Text.Replace("method: exhaustive", "method: NSGA-II, start: start.csv"));
        if (Make(kind, "start.csv"))
            Assert.Contains("start.csv", Assert.Single(AtOnce(() => StudyReader.Read(folder["study.yaml"])).Diagnostics).Message);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_run_to_compare_has_a_regular_file(string kind)
    {
        var good = RunJsonFolder.Write(folder, "good", ReportFixture.Report(3));
        Directory.CreateDirectory(folder["other"]);
        if (Make(kind, Path.Combine("other", "run.json")))
            Assert.Contains("run.json", Assert.Single(AtOnce(() => RunJsonFolder.Refused(good, folder["other"]))));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Remembered_evaluations_stand_in_a_regular_file(string kind)
    {
        if (!Make(kind, "memory"))
            return;
        AtOnce(() =>
        {
            try
            {
                using var memory = EvaluationCache.Open(folder["memory"], "a study", 4, 5, out var refusal);
                Assert.Null(memory);
                Assert.Contains("memory", refusal);
            }
            catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
            {
                // The command says so with the name of the file.
            }

            return true;
        });
    }

    [Fact]
    public void Ten_megabytes_of_commas_are_refused_at_once()
    {
        File.WriteAllText(folder["commas"], new string(',', 10_000_000));
        Assert.Single(AtOnce(() => StudyReader.Read(folder["commas"])).Diagnostics);
        File.WriteAllText(folder["study.yaml"], ProductLineStudy.Text(customers: "  customers: commas\n"));
        Assert.Contains("cells; 5000 is the most", Assert.Single(AtOnce(() => StudyReader.Read(folder["study.yaml"])).Diagnostics).Message);
    }

    /// <summary>False where the system has no such thing.</summary>
    private bool Make(string kind, string name)
    {
        if (!OperatingSystem.IsLinux())
            return false;
        if (kind == "folder")
            return Directory.CreateDirectory(folder[name]).Exists;
        var pipe = kind.Contains("link") ? folder["the-pipe"] : folder[name];
        if (kind.EndsWith("pipe", StringComparison.Ordinal))
            Process.Start("mkfifo", [pipe]).WaitForExit();
        if (kind != "pipe")
            File.CreateSymbolicLink(folder[name], kind.EndsWith("device", StringComparison.Ordinal) ? "/dev/zero" : pipe);
        return true;
    }

    private static T AtOnce<T>(Func<T> read)
    {
        var reading = Task.Run(read);
        Assert.True(reading.Wait(patience), $"was still reading after {patience.TotalSeconds} s");
        return reading.Result;
    }
}
