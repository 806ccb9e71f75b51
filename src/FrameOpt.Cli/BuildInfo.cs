using System.Reflection;
using System.Runtime.InteropServices;
using FrameOpt.Studies;

namespace FrameOpt.Cli;

/// <summary>What results are made with and on.</summary>
internal static class BuildInfo
{
    /// <summary>Of this program.</summary>
    public static string Version =>
        typeof(Study).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];

    /// <summary>Operating system, architecture, processors.</summary>
    public static string Platform =>
        $"{RuntimeInformation.OSDescription}, {RuntimeInformation.ProcessArchitecture}, {Environment.ProcessorCount} processors";
}
