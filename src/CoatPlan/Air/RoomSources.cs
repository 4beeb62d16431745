using CoatPlan.Presets;
using CoatPlan.Vapour;

namespace CoatPlan.Air;

/// <summary>Dated releases as sources of a room.</summary>
internal static class RoomSources
{
    /// <summary>Sources that feed one measure for each solvent: its share of the air.</summary>
    public static ImmutableArray<RoomSource> BySolvent(
        WorkRoom room, ImmutableArray<DatedRelease> releases, ImmutableArray<Solvent> solvents, LocalDateTime zero) =>
        [.. releases.Select(release => BySolvent(room, release, solvents, zero))];

    /// <summary>Sources that feed a single measure: a sum over solvents.</summary>
    public static MeasuredSource[] Summed(
        WorkRoom room, ImmutableArray<DatedRelease> releases, Func<Solvent, double, double> part, LocalDateTime zero)
    {
        var sources = new MeasuredSource[releases.Length];
        for (var i = 0; i < sources.Length; i++)
        {
            double atOnce = 0, fromFilm = 0;
            foreach (var one in releases[i].Release.Solvents)
            {
                atOnce += part(one.Solvent, Ratios.ShareOf(one.AtOnce, one.Solvent, room));
                fromFilm += part(one.Solvent, Ratios.ShareOf(one.FromFilm, one.Solvent, room));
            }

            var (first, minutes) = Sprayed(releases[i], zero);
            sources[i] = new MeasuredSource(first, minutes, FilmRate(releases[i]), atOnce, fromFilm);
        }

        return sources;
    }

    private static RoomSource BySolvent(WorkRoom room, DatedRelease release, ImmutableArray<Solvent> solvents, LocalDateTime zero)
    {
        var atOnce = new double[solvents.Length];
        var fromFilm = new double[solvents.Length];
        foreach (var part in release.Release.Solvents)
        {
            var i = solvents.IndexOf(solvents.First(solvent => solvent.Name == part.Solvent.Name));
            atOnce[i] += Ratios.ShareOf(part.AtOnce, part.Solvent, room);
            fromFilm[i] += Ratios.ShareOf(part.FromFilm, part.Solvent, room);
        }

        var (first, minutes) = Sprayed(release, zero);
        return new RoomSource(first, minutes, FilmRate(release), [.. atOnce], [.. fromFilm]);
    }

    private static (int First, int Minutes) Sprayed(DatedRelease release, LocalDateTime zero)
    {
        var first = MinuteOf(release.Start, zero);
        return (first, Math.Max(1, MinuteOf(release.End, zero) - first));
    }

    private static double FilmRate(DatedRelease release) => 1 / release.Release.FilmTime.TotalMinutes;

    /// <summary>The minute of a time, counted from zero.</summary>
    public static int MinuteOf(LocalDateTime time, LocalDateTime zero) => (Period.DaysBetween(zero.Date, time.Date) * NodaConstants.MinutesPerDay)
        + (int)((time.NanosecondOfDay - zero.NanosecondOfDay) / NodaConstants.NanosecondsPerMinute);
}
