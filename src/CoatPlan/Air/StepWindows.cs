namespace CoatPlan.Air;

/// <summary>What each step does to the air, from its start to the end of its purge.</summary>
internal static class StepWindows
{
    private const double Limit = 1;

    public static ImmutableArray<StepAir> Of(
        AirTrace trace, double[] mixture, double[] lel, ImmutableArray<DatedRelease> releases, LocalDateTime zero)
    {
        ImmutableArray<int> starts = [.. releases.Select(release => RoomSources.MinuteOf(release.Start, zero)).Distinct().Order()];
        var windows = releases.Select(release => Window(release, trace, mixture, starts, zero)).ToArray();
        var steps = new StepAir[windows.Length];
        // Windows that end together, as those of coats whose purges run into each other do, are filled from the last to the first start.
        foreach (var together in windows.Select((window, i) => (Window: window, At: i)).GroupBy(one => one.Window.Last))
        {
            var highest = new WindowPeaks(trace, mixture, lel, together.Key);
            foreach (var (window, at) in together.OrderByDescending(one => one.Window.First))
            {
                highest.ReachBackTo(window.First);
                steps[at] = new StepAir(releases[at].Step, highest.Peaks(), highest.Mixture, highest.Lel, window.Purge);
            }
        }

        return [.. steps];
    }

    private static (int First, int Last, Duration? Purge) Window(
        DatedRelease release, AirTrace trace, double[] mixture, ImmutableArray<int> starts, LocalDateTime zero)
    {
        var start = RoomSources.MinuteOf(release.Start, zero);
        var end = Math.Max(start + 1, RoomSources.MinuteOf(release.End, zero));
        var clear = ClearFrom(end, trace, mixture, starts);
        // The air is looked at until the next coat begins: a film may still raise it for a while after the can is down.
        var last = clear is { } known ? trace.RowFrom(NextStart(starts, known)) : trace.Minutes.Count;
        return (trace.RowFrom(start), last, clear is { } minute ? Duration.FromMinutes(minute - end) : null);
    }

    /// <summary>
    /// First minute from which the mixture stays under its limit until the next coat begins; where the next coat begins before that, its vapour counts too.
    /// Null where the air is still over when nobody follows it any more.
    /// </summary>
    private static int? ClearFrom(int end, AirTrace trace, double[] mixture, ImmutableArray<int> starts)
    {
        var clear = end;
        var next = NextStart(starts, IsUnder(end - 1, trace, mixture) ? end : end + 1);
        for (var row = trace.RowFrom(end); row < mixture.Length && trace.Minutes[row] < next; row++)
        {
            if (mixture[row] < Limit)
                continue;
            clear = trace.Minutes[row] + 1;
            // A coat that begins in the very next minute leaves no clean minute between.
            next = NextStart(starts, clear + 1);
        }

        if (next < int.MaxValue)
            return clear;
        return mixture.Length > 0 && mixture[^1] >= Limit ? null : clear;
    }

    /// <summary>First start at or after a minute; the end of time where there is none.</summary>
    private static int NextStart(ImmutableArray<int> starts, int from)
    {
        var found = starts.BinarySearch(from);
        var at = found >= 0 ? found : ~found;
        return at < starts.Length ? starts[at] : int.MaxValue;
    }

    private static bool IsUnder(int minute, AirTrace trace, double[] mixture) =>
        trace.RowFrom(minute) is var row && (row == mixture.Length || trace.Minutes[row] != minute || mixture[row] < Limit);
}
