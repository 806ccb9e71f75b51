using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace FrameOpt.StudyFile.Syntax;

/// <summary>Opens files for reading that a user names: regular files only, so that no pipe is waited for and no device read without
/// end.</summary>
public static class InputFile
{
    private const int ReadOnlyWithoutWaiting = 0x800 | 0x80000;

    /// <summary>Opens a regular file.</summary>
    /// <param name="path">Of the file, or of a link to it.</param>
    /// <exception cref="IOException">It is a pipe or a device, or the disk refuses.</exception>
    /// <exception cref="UnauthorizedAccessException">The disk refuses.</exception>
    public static FileStream Open(string path)
    {
        if (OperatingSystem.IsLinux())
            CheckWithoutWaiting(path);

        // Opened in the usual way, the file is refused while another program holds it.
        var stream = File.OpenRead(path);
        if (IsRegular(stream))
            return stream;
        stream.Dispose();
        throw NotRegular();
    }

    /// <summary>Reads a whole regular file, or null when it is larger.</summary>
    /// <param name="path">Of the file, or of a link to it.</param>
    /// <param name="largestBytes">No more than these are read, whatever the size the system states.</param>
    /// <exception cref="IOException">It is a pipe or a device, or the disk refuses.</exception>
    /// <exception cref="UnauthorizedAccessException">The disk refuses.</exception>
    public static byte[]? ReadAll(string path, long largestBytes)
    {
        using var stream = Open(path);
        if (stream.Length > largestBytes)
            return null;
        var bytes = new byte[stream.Length];
        var read = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return bytes[..read];
    }

    /// <summary>A device has no length but holds something; a pipe cannot be wound back.</summary>
    private static bool IsRegular(FileStream stream)
    {
        if (!stream.CanSeek)
            return false;
        return stream.Length > 0 || stream.ReadByte() < 0;
    }

    private static IOException NotRegular() => new("it is not a regular file");

    /// <summary>Opening a pipe in the usual way waits until somebody writes to it; what else is wrong is said when the file is
    /// opened.</summary>
    private static void CheckWithoutWaiting(string path)
    {
        if (open(path, ReadOnlyWithoutWaiting) is not (>= 0 and var descriptor))
            return;
        using var handle = new SafeFileHandle(descriptor, ownsHandle: true);
        using var stream = new FileStream(handle, FileAccess.Read, bufferSize: 0);
        if (!IsRegular(stream))
            throw NotRegular();
    }

#pragma warning disable SYSLIB1054, CA2101, IDE1006 // one call of the C library, as it names it; source generation would need unsafe code
    [DllImport("libc", CharSet = CharSet.Ansi, SetLastError = true)]
    private static extern int open(string path, int flags);
#pragma warning restore SYSLIB1054, CA2101, IDE1006
}
