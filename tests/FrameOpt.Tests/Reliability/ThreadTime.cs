using System.Diagnostics;
using System.Runtime.InteropServices;

namespace FrameOpt.Tests.Reliability;

/// <summary>Time of a processor that the current thread has used; where the system does not tell, time that has passed.</summary>
internal static class ThreadTime
{
    private const int OfThread = 3;

    public static TimeSpan Now => OperatingSystem.IsLinux() && clock_gettime(OfThread, out var time) == 0
        ? TimeSpan.FromTicks(time.Seconds * TimeSpan.TicksPerSecond + time.Nanoseconds / TimeSpan.NanosecondsPerTick)
        : Stopwatch.GetElapsedTime(0);

#pragma warning disable SYSLIB1054, IDE1006 // one call of the C library, as it names it; source generation would need a partial class
    [DllImport("libc")]
    private static extern int clock_gettime(int clock, out Time time);
#pragma warning restore SYSLIB1054, IDE1006

    private readonly record struct Time(long Seconds, long Nanoseconds);
}
