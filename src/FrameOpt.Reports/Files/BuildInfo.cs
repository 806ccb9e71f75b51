using System.Reflection;
using System.Runtime.InteropServices;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Files;

/// <summary>The program's version and the machine it runs on.</summary>
public static class BuildInfo
{
    private const int CommitLength = 12;

    private static readonly Assembly library = typeof(Study).Assembly;

    /// <summary>The version of this program with the beginning of the commit it was built from.</summary>
    public static string Version { get; } = Short(
        library.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion);

    /// <summary>The version and the build of the model: another build may have other formulas.</summary>
    public static string Build => $"{Version}, build {library.ManifestModule.ModuleVersionId:N}";

    /// <summary>Operating system, architecture, processors.</summary>
    public static string Platform =>
        $"{RuntimeInformation.OSDescription}, {RuntimeInformation.ProcessArchitecture}, {Environment.ProcessorCount} processors";

    private static string Short(string version) =>
        version.Split('+') is [var number, { Length: > CommitLength } commit] ? $"{number}+{commit[..CommitLength]}" : version;
}
