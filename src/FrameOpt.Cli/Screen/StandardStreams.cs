using System.Runtime.InteropServices;

namespace FrameOpt.Cli.Screen;

/// <summary>Tells whether the process was started with its output closed. Its number then belongs to some file that the runtime opened,
/// and what is printed would go there.</summary>
internal static class StandardStreams
{
    private const int Output = 1;
    private const int Error = 2;
    private const int GetDescriptorFlags = 1;
    private const int CloseOnExecute = 1;

    /// <summary>True when there is somewhere to write answers to.</summary>
    public static bool HasOutput { get; } = IsInherited(Output);

    /// <summary>True when there is somewhere to write messages to.</summary>
    public static bool HasError { get; } = IsInherited(Error);

    /// <summary>What a parent process hands on stays open over the start of a program; what the runtime opens is marked to close.</summary>
    private static bool IsInherited(int number) => !(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS())
        || fcntl(number, GetDescriptorFlags) is >= 0 and var flags && (flags & CloseOnExecute) == 0;

#pragma warning disable SYSLIB1054, IDE1006 // one call of the C library, as it names it; source generation would need unsafe code
    [DllImport("libc")]
    private static extern int fcntl(int handle, int command);
#pragma warning restore SYSLIB1054, IDE1006
}
