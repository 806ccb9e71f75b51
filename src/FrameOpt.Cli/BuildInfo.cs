using System.Reflection;
using System.Runtime.InteropServices;
using FrameOpt.Studies;

namespace FrameOpt.Cli;

/// <summary>The program's version and the machine it runs on.</summary>
internal static class BuildInfo
{
    /// <summary>The version of this program.</summary>
    public static string Version =>
        typeof(Study).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];

    /// <summary>The version with the commit and the build of the model: another build may have other formulas.</summary>
    public static string Build
    {
        get
        {
            var library = typeof(Study).Assembly;
            return $"{library.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion}, "
                + $"build {library.ManifestModule.ModuleVersionId:N}";
        }
    }

    /// <summary>Operating system, architecture, processors.</summary>
    public static string Platform =>
        $"{RuntimeInformation.OSDescription}, {RuntimeInformation.ProcessArchitecture}, {Environment.ProcessorCount} processors";
}
