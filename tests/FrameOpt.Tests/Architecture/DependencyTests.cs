using Xunit.Abstractions;

namespace FrameOpt.Tests.Architecture;

/// <summary>Dependencies point one way, in the calls of the built assemblies.</summary>
public class DependencyTests(ITestOutputHelper output)
{
    /// <summary>
    /// What each area may use besides itself. An area is a namespace with all below it that have no row of their own; "*" at the end
    /// stands for every area whose name begins so.
    /// </summary>
    private static readonly Dictionary<string, string[]> mayUse = new()
    {
        ["FrameOpt.Numerics"] = [],
        ["FrameOpt.Model"] = ["FrameOpt.Numerics"],
        ["FrameOpt.Plans"] = ["FrameOpt.Numerics"],
        ["FrameOpt.Search"] = ["FrameOpt.Numerics", "FrameOpt.Plans"],
        ["FrameOpt.Analysis"] = ["FrameOpt.Numerics", "FrameOpt.Plans"],
        ["FrameOpt.ProductLine.PMedian"] = ["FrameOpt.Numerics"],
        ["FrameOpt.ProductLine"] = ["FrameOpt.Numerics", "FrameOpt.ProductLine.PMedian"],
        ["FrameOpt.Studies"] = [.. BelowStudies],
        ["FrameOpt.Uncertainty"] = [.. BelowStudies, "FrameOpt.Studies"],
        ["FrameOpt.Fit"] = [.. BelowStudies, "FrameOpt.Studies"],
        ["FrameOpt.StudyFile"] = [.. BelowStudies, "FrameOpt.Studies"],
        ["FrameOpt.Forms"] = [.. BelowStudies, "FrameOpt.Studies", "FrameOpt.Fit", "FrameOpt.StudyFile"],
        ["FrameOpt.Running"] =
            [.. BelowStudies, "FrameOpt.Studies", "FrameOpt.Uncertainty", "FrameOpt.Fit", "FrameOpt.StudyFile", "FrameOpt.Forms"],

        ["FrameOpt.Reports.Text"] = [.. Library],
        ["FrameOpt.Reports.Tables"] = [.. Library, "FrameOpt.Reports.Text"],
        ["FrameOpt.Reports.Graphics"] = [.. Library, "FrameOpt.Reports.Text"],
        ["FrameOpt.Reports.Answer"] = [.. Library, .. Parts],
        ["FrameOpt.Reports.Workbook.Cells"] = [.. Library, "FrameOpt.Reports.Text", "FrameOpt.Reports.Tables"],
        ["FrameOpt.Reports.Workbook"] = [.. Library, .. Parts, "FrameOpt.Reports.Answer", "FrameOpt.Reports.Workbook.Cells"],
        ["FrameOpt.Reports.Runs"] = [.. Library, .. Parts, .. Documents],
        ["FrameOpt.Reports.Forms"] = [.. Library, .. Parts, "FrameOpt.Reports.Answer", "FrameOpt.Reports.Workbook.Cells"],
        ["FrameOpt.Reports.Page"] = [.. Library, .. Parts, "FrameOpt.Reports.Answer"],
        ["FrameOpt.Reports.Drafting"] = [.. Library, "FrameOpt.Reports.Text", "FrameOpt.Reports.Graphics", "FrameOpt.Reports.Answer"],
        ["FrameOpt.Reports.Drafting.Template"] = [.. Library, "FrameOpt.Reports.Text", "FrameOpt.Reports.Drafting"],
        ["FrameOpt.Reports.Files"] = [.. Library, .. Parts, .. Documents, "FrameOpt.Reports.Drafting*"],
        ["FrameOpt.Reports.Compare"] = [.. Library, .. Parts, .. Documents, "FrameOpt.Reports.Files"],
        ["FrameOpt.Reports.ProductLine"] = [.. Library, .. Parts, .. Documents, "FrameOpt.Reports.Files"],

        ["FrameOpt.Cli"] = [.. Library, "FrameOpt.Reports*"],
    };

    private static string[] BelowStudies =>
        ["FrameOpt.Numerics", "FrameOpt.Model", "FrameOpt.Plans", "FrameOpt.Search", "FrameOpt.Analysis", "FrameOpt.ProductLine*"];

    private static string[] Library =>
    [
        .. BelowStudies, "FrameOpt.Studies", "FrameOpt.Uncertainty", "FrameOpt.Fit", "FrameOpt.StudyFile", "FrameOpt.Forms",
        "FrameOpt.Running",
    ];

    private static string[] Parts => ["FrameOpt.Reports.Text", "FrameOpt.Reports.Tables", "FrameOpt.Reports.Graphics"];

    private static string[] Documents => ["FrameOpt.Reports.Answer", "FrameOpt.Reports.Workbook*", "FrameOpt.Reports.Page"];

    public static TheoryData<string> Areas => [.. mayUse.Keys];

    [Theory]
    [MemberData(nameof(Areas))]
    public void Each_area_uses_only_the_areas_below_it(string area)
    {
        var wrong = CallGraph.Uses.Where(use => Area(use.User) == area && !Allowed(area, Area(use.Used))).ToArray();
        Assert.True(wrong.Length == 0, $"{wrong.Length} uses that {area} may not have:\n{string.Join('\n', wrong.AsEnumerable())}");
    }

    [Fact]
    public void Every_namespace_has_a_row_that_says_what_it_may_use_and_every_row_a_namespace()
    {
        var unknown = CallGraph.Namespaces.Where(name => !mayUse.ContainsKey(Area(name))).ToArray();
        var idle = mayUse.Keys.Where(area => !CallGraph.Namespaces.Any(name => Area(name) == area)).ToArray();
        Assert.True(unknown.Length + idle.Length == 0,
            $"without a row: {string.Join(", ", unknown)}\nrows without a namespace: {string.Join(", ", idle)}");
    }

    [Fact]
    public void No_two_namespaces_use_each_other_directly_or_through_others()
    {
        var graph = new NamespaceGraph(CallGraph.Namespaces, CallGraph.Uses);
        output.WriteLine(graph.Table());
        var cycles = graph.Cycles();
        Assert.True(cycles.Count == 0, $"{graph.Describe(cycles)}\nAll namespaces:\n{graph.Table()}");
    }

    [Fact]
    public void The_library_knows_nothing_of_reports_and_command_line() =>
        Assert.DoesNotContain(Shipped.Library.GetReferencedAssemblies(), name =>
            name.Name!.StartsWith("FrameOpt.") || name.Name is "ClosedXML" or "Spectre.Console" or "System.CommandLine");

    private static bool Allowed(string area, string used) =>
        used == area || mayUse[area].Any(rule => rule.EndsWith('*') ? used.StartsWith(rule[..^1]) : used == rule);

    private static string Area(Type type) => Area(type.Namespace!);

    /// <summary>The longest row that the namespace lies in, or the namespace itself if none.</summary>
    private static string Area(string name) =>
        mayUse.Keys.Where(area => name == area || name.StartsWith(area + ".")).MaxBy(area => area.Length) ?? name;
}
