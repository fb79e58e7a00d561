using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Condyle.Benchmarks.Measuring;

/// <summary>
/// The time that this thread has run, where the system tells: what others do on a shared machine then takes no part. Nothing that is measured in
/// process uses more than one thread.
/// </summary>
internal static class ThreadClock
{
    private const int ThreadCpuTime = 3;

    public static double Seconds()
    {
        if (!OperatingSystem.IsLinux())
            return (double)Stopwatch.GetTimestamp() / Stopwatch.Frequency;
        _ = ReadClock(ThreadCpuTime, out var time);
        return time.Seconds + (time.Nanoseconds * 1e-9);
    }

    [DllImport("libc", EntryPoint = "clock_gettime")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int ReadClock(int clock, out Time time);

    [StructLayout(LayoutKind.Sequential)]
    private readonly struct Time
    {
        public readonly nint Seconds;
        public readonly nint Nanoseconds;
    }
}
