using System.Globalization;

namespace CoatPlan.Bench.Screens;

/// <summary>How long the thread that asks was on a processor, which other work on the machine does not lengthen as much as the time on the wall.</summary>
internal static class ThreadTime
{
    // The first figure is nanoseconds on a processor, brought up to date at every tick of the scheduler. Source: the Linux kernel's documentation, scheduler/sched-stats.
    private const string OfThisThread = "/proc/thread-self/schedstat";

    /// <summary>The time up to now; nothing where the system does not tell it.</summary>
    public static TimeSpan? Now => File.Exists(OfThisThread)
        ? TimeSpan.FromMicroseconds(long.Parse(File.ReadAllText(OfThisThread).Split(' ')[0], CultureInfo.InvariantCulture) / 1000.0)
        : null;
}
