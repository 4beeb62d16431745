using CoatPlan.Presets;
using CoatPlan.Vapour;
using UnitsNet;

namespace CoatPlan.Air;

/// <summary>Works out what would bring a passed limit under, each answer by running the room again.</summary>
internal static class AirMends
{
    /// <summary>No coat is split further: smaller goes are no coat any more.</summary>
    private const int MostGoes = 32;

    /// <summary>No longer pause is looked for than from one day to the next.</summary>
    private static readonly int LongestPause = (int)Duration.FromHours(24).TotalMinutes;

    /// <summary>The mend of one limit.</summary>
    /// <param name="code">The warning that it goes with.</param>
    /// <param name="room">The room with the exhaust there is.</param>
    /// <param name="exhaust">The exhaust that would bring it under.</param>
    /// <param name="releases">In the order of their starts.</param>
    /// <param name="part">What a share of a solvent counts in the sum that the limit holds for.</param>
    /// <param name="under">The limit of that sum, more than zero.</param>
    public static AirMend Of(
        string code, WorkRoom room, VolumeFlow exhaust, ImmutableArray<DatedRelease> releases, Func<Solvent, double, double> part, double under)
    {
        var zero = releases[0].Start;
        var sources = RoomSources.Summed(room, releases, part, zero);
        var goes = sources.Select(source => Goes(source, room, under)).ToArray();
        return new AirMend(
            code,
            exhaust,
            AtATime(releases, goes),
            goes.Any(count => count is null) ? null : Pause(sources, [.. goes.Select(count => count!.Value)], room, under));
    }

    /// <summary>The fewest like goes of which one alone, in clean air, stays under; null where even the smallest does not.</summary>
    private static int? Goes(MeasuredSource source, WorkRoom room, double under)
    {
        for (var goes = 1; goes <= MostGoes; goes++)
        {
            if (RoomCeiling.KeepsUnder(room.RatePerMinute, [Part(source, goes, 0)], under))
                return goes;
        }

        return null;
    }

    private static ImmutableArray<SprayAtATime> AtATime(ImmutableArray<DatedRelease> releases, int?[] goes) =>
    [
        .. releases.Select((release, i) => (release, goes: goes[i] ?? MostGoes))
            .Where(one => one.goes > 1)
            .GroupBy(one => one.release.Product)
            .Select(group => group.MaxBy(one => one.goes))
            .Select(worst => new SprayAtATime(worst.release.Product, worst.release.Step, worst.release.Packages / worst.goes, worst.goes)),
    ];

    /// <summary>Least pause, whole minutes, that keeps all goes under when each waits for it; null where a day is not enough.</summary>
    private static Duration? Pause(MeasuredSource[] sources, int[] goes, WorkRoom room, double under)
    {
        if (!RoomCeiling.KeepsUnder(room.RatePerMinute, Spread(sources, goes, LongestPause), under))
            return null;

        int low = -1, high = LongestPause;
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (RoomCeiling.KeepsUnder(room.RatePerMinute, Spread(sources, goes, middle), under))
                high = middle;
            else
                low = middle;
        }

        return Duration.FromMinutes(high);
    }

    /// <summary>The goes one after another: none before its own time, none within the pause after the one before.</summary>
    private static MeasuredSource[] Spread(MeasuredSource[] sources, int[] goes, int pause)
    {
        var spread = new MeasuredSource[goes.Sum()];
        var (at, free) = (0, int.MinValue);
        for (var i = 0; i < sources.Length; i++)
        {
            for (var go = 0; go < goes[i]; go++)
            {
                var part = Part(sources[i], goes[i], Math.Max(sources[i].First, free));
                spread[at++] = part;
                free = part.End + pause;
            }
        }

        return spread;
    }

    /// <summary>One of so many like goes: its part of the vapour in its part of the time.</summary>
    private static MeasuredSource Part(MeasuredSource whole, int goes, int first) =>
        new(first, Math.Max(1, whole.Minutes / goes), whole.FilmRate, whole.AtOnce / goes, whole.FromFilm / goes);
}
