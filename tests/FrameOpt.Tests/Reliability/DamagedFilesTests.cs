using System.Text;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Compare;
using FrameOpt.Reports.Files;
using FrameOpt.Running;
using FrameOpt.Search.Stopping;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.Tests.Running;
using Xunit.Abstractions;

namespace FrameOpt.Tests.Reliability;

/// <summary>
/// No file a user hands over ends in a fault of the program, hangs it or fills the memory: it is used, or refused with a message that
/// says where. Five kinds of file, a fifth of the cases each.
/// </summary>
public class DamagedFilesTests(ITestOutputHelper output)
{
    private const int Kinds = 5;
    private const string Version = "test";

    /// <summary>A product line for the customers of the shipped one, whose options change next to nothing: quick to read.</summary>
    private static readonly byte[] lineStudy = Encoding.UTF8.GetBytes($$"""
        {{File.ReadAllText(Repository.Study("custom-match"))}}
        line:
          variants: 2
          response: effort_worst
          options:
            engine: { light single: { machine: { pilot: { lean: 79 mm } } }, big single: { machine: { pilot: { lean: 80 mm } } } }
            wing: { 24 m²: { wing: { mass: 5 kg } }, 28 m²: { wing: { mass: 6 kg } } }
          customers: customers.csv

        """);

    private static readonly Study remembered = WorkedStudy.Over([400, 480], [0, 60], [100, 400], [-3, 3]) with
    {
        Search = new SearchSetting.Evolutionary(SearchMethod.NsgaII, 8, 3, new StopRules(40)),
    };

    private static string Templates => Path.Combine(Repository.Root, "src", "FrameOpt", "StudyFile", "Templates");

    [Fact]
    public void Damaged_study_is_refused_with_its_place_or_runs()
    {
        var files = Repository.Studies.Select(Repository.Study).Concat(Directory.GetFiles(Templates, "*.yaml").Order());
        var customers = File.ReadAllBytes(Path.Combine(Repository.Root, "studies", "product-line", "customers.csv"));
        Run("study", [.. files.Select(File.ReadAllBytes)], (input, folder, lot) =>
        {
            File.WriteAllBytes(Path.Combine(folder, "customers.csv"), customers);
            return StudyTrials.Read(Write(folder, "study.yaml", input), "study.yaml", lot);
        });
    }

    [Fact]
    public void Damaged_table_of_customers_is_refused_with_its_name_or_gives_customers_of_sense()
    {
        var file = Path.Combine(Repository.Root, "studies", "product-line", "customers.csv");
        Run("customers", [File.ReadAllBytes(file)], (input, folder, _) =>
        {
            Write(folder, "customers.csv", input);
            var path = Write(folder, "study.yaml", lineStudy);
            if (!StudyTrials.Read(path, "customers.csv", 1))
                return false;
            foreach (var customer in StudyReader.Read(path).Study!.Line!.Customers)
            {
                BrokenPromise.Unless(
                    customer.PilotMassKilograms is >= 20 and <= 250 && customer.Share is > 0 and < double.PositiveInfinity,
                    "a customer without sense", $"a customer of {customer.PilotMassKilograms} kg who counts {customer.Share}");
            }

            return true;
        });
    }

    [Fact]
    public void Damaged_table_to_start_from_is_refused_with_its_name_or_starts_the_search()
    {
        var study = Encoding.UTF8.GetBytes(
            File.ReadAllText(Repository.Study("seven-factors")).Replace("  seed: 1\n", "  seed: 1\n  start: start.csv\n"));
        const string start = "rank,hang_point_spacing [mm],lateral_offset [mm],suspension_height [mm],thrust_line_angle [deg],"
            + """
            thrust_line_tilt [deg],hub_up [mm],hang_line_forward [mm]
            1,440,-20,200,1.5,3,110,-60
            2,400.5,-50,150,-3,0,60,-100
            3,480,10,350,3,8,160,-20

            """;
        Run("start", [Encoding.UTF8.GetBytes(start)], (input, folder, lot) =>
        {
            Write(folder, "start.csv", input);
            return StudyTrials.Read(Write(folder, "study.yaml", study), "start.csv", lot);
        });
    }

    [Fact]
    public void Damaged_file_of_remembered_evaluations_is_refused_or_changes_no_result()
    {
        using var folder = new TemporaryFolder();
        var expected = Remembered(folder["good.csv"], out _);
        Run("remember", [File.ReadAllBytes(folder["good.csv"])], (input, place, _) =>
        {
            var path = Write(place, "evaluations.csv", input);
            var found = Remembered(path, out var refusal);
            if (found is null)
            {
                BrokenPromise.Unless(refusal.Contains(path), "a message without its file", refusal);
                BrokenPromise.Unless(input.AsSpan().SequenceEqual(File.ReadAllBytes(path)), "a refused file was changed", refusal);
                return false;
            }

            BrokenPromise.Unless(found == expected, "a result that the file changed", found);
            return true;
        });
    }

    [Fact]
    public void Damaged_run_is_refused_with_its_path_or_compared()
    {
        var runner = new StudyRunner(WorkedStudy.Over([440], [20, 30], [200], [0]), threads: 1);
        foreach (var _ in runner.Steps())
        {
        }

        using var made = new MemoryStream();
        RunJson.Write(RunReport.Of(runner.Result(), new RunInfo("study.yaml", Version, 0)), made);
        var good = made.ToArray();
        Run("run.json", [good], (input, folder, lot) =>
        {
            foreach (var (name, bytes) in new[] { ("good", good), ("damaged", input) })
                Write(Directory.CreateDirectory(Path.Combine(folder, name)).FullName, "run.json", bytes);
            var damaged = Path.Combine(folder, "damaged");
            if (ComparisonReader.Read([Path.Combine(folder, "good"), damaged], Version, out var errors) is not { } comparison)
            {
                BrokenPromise.Unless(errors.Count > 0 && errors.All(error => error.Contains(damaged)), "a message without its file",
                    string.Join(' ', errors));
                return false;
            }

            ComparisonSections.Of(comparison);
            if (lot % 20 == 0)
                ComparisonPage.Of(comparison);
            return true;
        });
    }

    private static string Write(string folder, string name, byte[] bytes)
    {
        var path = Path.Combine(folder, name);
        File.WriteAllBytes(path, bytes);
        return path;
    }

    /// <summary>The front of a run that keeps its evaluations in this file, in words; null with a refusal.</summary>
    private static string? Remembered(string path, out string refusal)
    {
        using var cache = EvaluationCache.Open(path, "a study", remembered.Factors.Count, remembered.Mission.Count, out refusal);
        if (cache is null)
            return null;
        var run = new SearchRun(remembered, StudyProblem.Model(remembered), 1, cache);
        foreach (var _ in run.Batches())
        {
        }

        return string.Join('\n', run.RankedFront().Select(design => FormattableString.Invariant(
            $"{design.Number} {string.Join(' ', design.Objectives.Select(value => value.ToString("R", null)))}")));
    }

    private void Run(string name, IReadOnlyList<byte[]> seeds, Func<byte[], string, uint, bool> isAccepted) =>
        new Campaign(name, seeds, isAccepted).Run(Cases.OfFiles / Kinds, output);
}
