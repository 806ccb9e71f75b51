using System.Runtime.InteropServices;

namespace FrameOpt.Reports.Files;

/// <summary>What the standard library does not offer for folders: exchanging two in one step, and flushing one to the disk.</summary>
internal static class DurableDirectory
{
    private const int CurrentFolder = -100;
    private const uint Exchanging = 2;
    private const int ReadOnly = 0;

    /// <summary>Exchanges two folders: afterwards each has the other's name. On Linux in one step; elsewhere, or on a disk that cannot, the
    /// second is moved aside for a moment.</summary>
    public static void Exchange(string temporary, string target)
    {
        if (OperatingSystem.IsLinux() && renameat2(CurrentFolder, temporary, CurrentFolder, target, Exchanging) == 0)
            return;
        var old = FolderLeftovers.OldPath(temporary);
        Directory.Move(target, old);
        try
        {
            Directory.Move(temporary, target);
        }
        catch
        {
            Directory.Move(old, target);
            throw;
        }

        Directory.Move(old, temporary);
    }

    /// <summary>Makes the names in a folder survive a power cut; does nothing where the system has no such call.</summary>
    public static void Flush(string folder)
    {
        if (!OperatingSystem.IsLinux() || open(folder, ReadOnly) is not (>= 0 and var handle))
            return;
        _ = fsync(handle);
        _ = close(handle);
    }

#pragma warning disable SYSLIB1054, CA2101, IDE1006 // calls of the C library, as it names them; source generation needs unsafe code
    [DllImport("libc", CharSet = CharSet.Ansi)]
    private static extern int renameat2(int fromFolder, string from, int toFolder, string to, uint flags);

    [DllImport("libc", CharSet = CharSet.Ansi)]
    private static extern int open(string path, int flags);

    [DllImport("libc")]
    private static extern int fsync(int handle);

    [DllImport("libc")]
    private static extern int close(int handle);
#pragma warning restore SYSLIB1054, CA2101, IDE1006
}
