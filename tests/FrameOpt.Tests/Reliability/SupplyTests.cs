using System.Diagnostics;
using System.Net;
using System.Net.Http;
using System.Net.Sockets;
using FrameOpt.Tests.Architecture;

namespace FrameOpt.Tests.Reliability;

/// <summary>What the program is made of: no package with a known fault, every licence known, nothing that goes to the network.</summary>
public class SupplyTests
{
    /// <summary>Namespaces whose use could open a connection or start another program.</summary>
    private static readonly string[] forbidden = ["System.Net", "System.IO.Pipes", "System.Web"];

    [Fact]
    public void No_resolved_package_has_a_known_fault()
    {
        Assert.Contains(Packages.Resolved, package => package.Name == "ClosedXML");
        Assert.Empty(Packages.Denied(Packages.Resolved));
    }

    // ClosedXML 0.95.4 asks for System.Drawing.Common 4.7.0, and the registry's own audit reports nothing.
    [Theory]
    [InlineData("System.Drawing.Common", "4.7.0", true)]
    [InlineData("system.drawing.common", "4.7.1", true)]
    [InlineData("System.Drawing.Common", "4.7.2", false)]
    [InlineData("System.Drawing.Common", "5.0.2", true)]
    [InlineData("System.Drawing.Common", "5.0.3", false)]
    [InlineData("Newtonsoft.Json", "12.0.3", true)]
    [InlineData("YamlDotNet", "18.1.0", false)]
    public void Check_sees_a_package_with_a_known_fault(string package, string version, bool isDenied) =>
        Assert.Equal(isDenied, Packages.Denied([(package, Version.Parse(version))]).Any());

    [Fact]
    public void Licence_of_every_resolved_package_is_on_the_list()
    {
        string[] allowed = ["MIT", "MIT-0", "Apache-2.0", "BSD-3-Clause", "MS-PL OR Apache-2.0"];
        var listed = Packages.List("licences.csv").ToDictionary(row => row[0], row => row[1]);
        var names = Packages.Resolved.Select(package => package.Name).ToHashSet();
        Assert.All(names, name => Assert.Contains(name, listed.Keys));
        Assert.All(listed, row => Assert.Contains(row.Value, allowed));

        // Benchmarks, browser and native build need not be restored where the tests run.
        var idle = Packages.List("licences.csv")
            .Where(row => row[3] is not ("benchmarks" or "the browser" or "a native build") && !names.Contains(row[0]))
            .Select(row => row[0]);
        Assert.Empty(idle);
    }

    [Fact]
    public void Program_uses_nothing_that_opens_a_connection_or_starts_another_program()
    {
        // open serves a folder to this machine and asks the system to show an address: nothing leaves the machine.
        string[] serving = ["FrameOpt.Cli.OpenCommand.", "FrameOpt.Cli.WebFolderServer."];
        var uses = Shipped.Types.SelectMany(CallGraph.Of).Where(IsForbidden).Select(use => use.ToString()).Distinct()
            .Where(use => !serving.Any(type => use.StartsWith(type, StringComparison.Ordinal)));
        Assert.Empty(uses);
    }

    [Fact]
    public void Check_sees_a_connection_and_a_started_program()
    {
        var seen = typeof(Sample).GetMembers(Touched.Declared).Length > 0
            ? CallGraph.Of(typeof(Sample)).Where(IsForbidden).Select(use => use.Used).ToHashSet() : [];
        Assert.Contains(typeof(HttpClient), seen);
        Assert.Contains(typeof(TcpClient), seen);
        Assert.Contains(typeof(Process), seen);
        Assert.DoesNotContain(typeof(WebUtility), seen);
    }

    private static bool IsForbidden(TypeUse use) =>
        use.Used == typeof(Process) || use.Used != typeof(WebUtility) && use.Used.Namespace is { } name
            && forbidden.Any(area => name == area || name.StartsWith($"{area}."));

    /// <summary>Never run, only read.</summary>
    private abstract class Sample
    {
        public static object Fetch() => new HttpClient();

        public static object Connect() => new TcpClient();

        public static object Start() => Process.Start("true");

        public static string Escape() => WebUtility.HtmlEncode("<");
    }
}
