using UnitsNet;

namespace CoatPlan.Air;

/// <summary>What each step does to the air, from its start to the end of its purge.</summary>
internal static class StepWindows
{
    private const double Limit = 1;

    public static ImmutableArray<StepAir> Of(
        AirTrace trace, double[] mixture, double[] lel, ImmutableArray<DatedRelease> releases, LocalDateTime zero)
    {
        ImmutableArray<int> starts = [.. releases.Select(release => RoomSources.MinuteOf(release.Start, zero)).Distinct().Order()];
        return [.. releases.Select(release => Step(release, trace, mixture, lel, starts, zero))];
    }

    private static StepAir Step(
        DatedRelease release, AirTrace trace, double[] mixture, double[] lel, ImmutableArray<int> starts, LocalDateTime zero)
    {
        var start = RoomSources.MinuteOf(release.Start, zero);
        var end = Math.Max(start + 1, RoomSources.MinuteOf(release.End, zero));
        var clear = ClearFrom(end, trace, mixture, starts);
        var first = trace.RowFrom(start);
        // The air is looked at until the next coat begins: a film may still raise it for a while after the can is down.
        var last = clear is { } known ? trace.RowFrom(NextStart(starts, known)) : trace.Minutes.Count;
        return new StepAir(
            release.Step,
            Peaks(trace, first, last),
            Highest(mixture, first, last),
            Highest(lel, first, last),
            clear is { } minute ? Duration.FromMinutes(minute - end) : null);
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

    private static ImmutableArray<SolventPeak> Peaks(AirTrace trace, int first, int last)
    {
        var peaks = ImmutableArray.CreateBuilder<SolventPeak>();
        for (var i = 0; i < trace.Solvents.Length; i++)
        {
            var highest = 0.0;
            for (var row = first; row < last; row++)
                highest = Math.Max(highest, trace.At(row, i));
            if (highest > 0)
                peaks.Add(new SolventPeak(trace.Solvents[i], Ratio.FromDecimalFractions(highest)));
        }

        return peaks.ToImmutable();
    }

    private static double Highest(double[] measure, int first, int last)
    {
        var highest = 0.0;
        for (var row = first; row < last; row++)
            highest = Math.Max(highest, measure[row]);
        return highest;
    }
}
