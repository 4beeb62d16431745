using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>What has been done already, as facts on the clock.</summary>
internal sealed record FactsDone
{
    private readonly ILookup<string, FactDone> operations;
    private readonly ILookup<(int? Layer, int? Coat), FactDone> coats;

    private FactsDone(ImmutableArray<FactDone> facts, int release)
    {
        Release = release;
        IsEmpty = facts.IsEmpty;
        operations = facts.Where(fact => fact.Entry.Operation is not null).ToLookup(fact => fact.Entry.Operation!, StringComparer.Ordinal);
        coats = facts.Where(fact => fact.Entry.Coat is not null).ToLookup(fact => (fact.Entry.Layer, fact.Entry.Coat));
    }

    /// <summary>The first minute at which anything undone may start.</summary>
    public int Release { get; }

    /// <summary>Whether nothing has been done.</summary>
    public bool IsEmpty { get; }

    // Of the operations only those count that ended later than the one and no later than the other.
    private int EndedAfter { get; init; } = int.MinValue;

    private int EndedBy { get; init; } = int.MaxValue;

    /// <summary>The facts of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="clock">The clock.</param>
    public static FactsDone Of(Job job, Clock clock)
    {
        var release = job.AsOf is { } now ? Math.Max(0, clock.MinuteAtOrAfter(now)) : 0;
        // An entry without a time was done by as-of, the contract says; the latest moment promises least of what dries from there.
        return new([.. job.Done.Select(entry => new FactDone(entry, entry.At is { } at ? clock.MinuteAtOrAfter(at) : release))], release);
    }

    /// <summary>When an operation was done on surfaces, and how long it took; null where it was not done on all of them.</summary>
    public DoneWork? Of(string operation, ImmutableArray<string> surfaces, int plannedMinutes) =>
        Placed(operations[operation].Where(fact => fact.End > EndedAfter && fact.End <= EndedBy), surfaces, plannedMinutes);

    /// <summary>When a coat was put on, and how long it took; null where it was not put on all its surfaces.</summary>
    public DoneWork? Of(CoatTask coat, int plannedMinutes) => Placed(coats[(coat.Layer, coat.Coat)], coat.Surfaces, plannedMinutes);

    /// <summary>The thickest film that was read on a coat of surfaces, over the label's film of one coat; 1 where none was read or the label gives no film.</summary>
    public double FilmShare(Label label, int layer, int coat, ImmutableArray<string> surfaces) =>
        label.DryFilm is not { } usual
            ? 1
            : coats[(layer, coat)]
                .Where(fact => fact.IsOfAny(surfaces))
                .Select(fact => fact.Entry.Readings?.Film is { } film ? film / usual : 1)
                .Append(1)
                .Max();

    /// <summary>What ended by a coat's start: the wipe before it, not the one after it. All where the coat is not on.</summary>
    public FactsDone Before(Placement? coat) => coat is { } on ? this with { EndedBy = on.Start } : this;

    /// <summary>What ended after a coat: no operation where the coat is not on.</summary>
    public FactsDone After(Placement? coat) => this with { EndedAfter = coat?.End ?? int.MaxValue };

    /// <summary>Whether an operation before the coats goes without saying, since a coat has been put on.</summary>
    public bool IsPast(Prep.Operation operation) =>
        operation.Stage < Stages.Coat && coats.Count > 0 && Of(operation.Word, operation.Surfaces, 1) is null;

    /// <summary>The coats that a surface has had, as a word that is the same for surfaces with the same history.</summary>
    public string HistoryOf(string surface) =>
        string.Join(
            ' ',
            coats.SelectMany(same => same)
                .Where(fact => fact.Entry.Surfaces.Contains(surface))
                .Select(fact => FormattableString.Invariant($"{fact.Entry.Layer}.{fact.Entry.Coat}@{fact.End}")));

    /// <summary>When an operation was done on surfaces for the first time: what was done again later is left out. Null where it was not done on all of them.</summary>
    public DoneWork? FirstOf(string operation, ImmutableArray<string> surfaces, int plannedMinutes)
    {
        var facts = operations[operation]
            .Where(fact => fact.End > EndedAfter && fact.End <= EndedBy && (surfaces.IsEmpty || fact.IsOfAny(surfaces)))
            .OrderBy(fact => fact.End)
            .ToArray();
        for (var count = 1; count <= facts.Length; count++)
        {
            if (Placed(facts[..count], surfaces, plannedMinutes) is { } first)
                return first;
        }

        return null;
    }

    private static DoneWork? Placed(IEnumerable<FactDone> matching, ImmutableArray<string> surfaces, int plannedMinutes)
    {
        FactDone[] found = [.. matching];
        if (found.Length == 0 || !surfaces.All(surface => Array.Exists(found, fact => fact.IsOf(surface))))
            return null;

        var relevant = Array.FindAll(found, fact => surfaces.IsEmpty || fact.IsOfAny(surfaces));
        var at = new Placement(relevant.Min(fact => fact.End - fact.HandsOn(surfaces, plannedMinutes)), relevant.Max(fact => fact.End));
        // What was written down twice was done once.
        return new DoneWork(at, Math.Min(at.End - at.Start, relevant.Sum(fact => fact.HandsOn(surfaces, plannedMinutes))));
    }

    // An entry of the job, and the minute at which it ended.
    private sealed record FactDone(DoneEntry Entry, int End)
    {
        public bool IsOf(string surface) => Entry.Surfaces.IsEmpty || Entry.Surfaces.Contains(surface);

        public bool IsOfAny(ImmutableArray<string> surfaces) => Entry.Surfaces.IsEmpty || Entry.Surfaces.Any(surfaces.Contains);

        // What one entry took for more surfaces than the step has is shared among them alike; what was not said is as planned, for those surfaces of the step that it names.
        public int HandsOn(ImmutableArray<string> surfaces, int plannedMinutes)
        {
            if (Entry.Surfaces.IsEmpty || surfaces.IsEmpty)
                return Entry.Took is { } all ? Activities.Minutes(all) : plannedMinutes;

            var both = (double)Entry.Surfaces.Count(surfaces.Contains);
            return Activities.Minutes(Entry.Took is { } took ? took * (both / Entry.Surfaces.Length) : Duration.FromMinutes(plannedMinutes * (both / surfaces.Length)));
        }
    }
}
