using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>What has been done already, as facts on the clock.</summary>
/// <param name="Entries">The job's entries.</param>
/// <param name="Clock">The clock.</param>
/// <param name="Release">The first minute at which anything undone may start.</param>
internal sealed record FactsDone(ImmutableArray<DoneEntry> Entries, Clock Clock, int Release)
{
    /// <summary>The facts of a job.</summary>
    public static FactsDone Of(Job job, Clock clock) =>
        new(job.Done, clock, job.AsOf is { } now ? Math.Max(0, clock.MinuteAtOrAfter(now)) : 0);

    /// <summary>When an operation was done on surfaces; null where it was not done on all of them.</summary>
    public Placement? Of(string operation, ImmutableArray<string> surfaces, int plannedMinutes) =>
        Placed(surfaces, plannedMinutes, entry => entry.Operation == operation);

    /// <summary>When a coat was put on; null where it was not put on all its surfaces.</summary>
    public Placement? Of(CoatTask coat, int plannedMinutes) =>
        Placed(coat.Surfaces, plannedMinutes, entry => entry.Layer == coat.Layer && entry.Coat == coat.Coat);

    /// <summary>The thickest film that was read on a coat of surfaces, over the label's film of one coat; 1 where none was read or the label gives no film.</summary>
    public double FilmShare(Label label, int layer, int coat, ImmutableArray<string> surfaces) =>
        label.DryFilm is not { } usual
            ? 1
            : Entries
                .Where(entry => entry.Layer == layer && entry.Coat == coat && (entry.Surfaces.IsEmpty || entry.Surfaces.Any(surfaces.Contains)))
                .Select(entry => entry.Readings?.Film is { } film ? film / usual : 1)
                .Append(1)
                .Max();

    /// <summary>What ended by a coat's start: the wipe before it, not the one after it. All where the coat is not on.</summary>
    public FactsDone Before(Placement? coat) =>
        coat is { } on ? this with { Entries = [.. Entries.Where(entry => entry.Coat is not null || EndOf(entry) <= on.Start)] } : this;

    /// <summary>What ended after a coat: nothing where the coat is not on.</summary>
    public FactsDone After(Placement? coat) =>
        this with { Entries = [.. Entries.Where(entry => entry.Coat is not null || (coat is { } on && EndOf(entry) > on.End))] };

    /// <summary>Whether an operation before the coats goes without saying, since a coat has been put on.</summary>
    public bool IsPast(Prep.Operation operation) =>
        operation.Stage < Stages.Coat && Entries.Any(entry => entry.Coat is not null) && Of(operation.Word, operation.Surfaces, 1) is null;

    /// <summary>The coats that a surface has had, as a word that is the same for surfaces with the same history.</summary>
    public string HistoryOf(string surface) =>
        string.Join(
            ' ',
            Entries
                .Where(entry => entry.Coat is not null && entry.Surfaces.Contains(surface))
                .Select(entry => FormattableString.Invariant($"{entry.Layer}.{entry.Coat}@{EndOf(entry)}")));

    private Placement? Placed(ImmutableArray<string> surfaces, int plannedMinutes, Func<DoneEntry, bool> matches)
    {
        var found = Entries.Where(matches).ToImmutableArray();
        if (found.IsEmpty)
            return null;
        if (!surfaces.All(surface => found.Any(entry => entry.Surfaces.IsEmpty || entry.Surfaces.Contains(surface))))
            return null;

        var relevant = found.Where(entry => entry.Surfaces.IsEmpty || surfaces.IsEmpty || entry.Surfaces.Any(surfaces.Contains)).ToArray();
        var end = relevant.Max(EndOf);
        var start = relevant.Min(entry => EndOf(entry) - (entry.Took is { } took ? Activities.Minutes(took) : plannedMinutes));
        return new Placement(start, end);
    }

    // An entry without a time was done by as-of, the contract says; the latest moment promises least of what dries from there.
    private int EndOf(DoneEntry entry) => entry.At is { } at ? Clock.MinuteAtOrAfter(at) : Release;
}
