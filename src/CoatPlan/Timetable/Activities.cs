using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>Steps as activities: who and what they take, what they leave in the air, what they keep clear of.</summary>
internal static class Activities
{
    // Work that belongs to the coat that follows: once begun it is finished in the same go, where any opening is long enough for it.
    private static readonly ImmutableArray<string> InOneGo = ["final-wipe", "tack", "unmask"];

    // Tape that comes off and goes on again does so in turn: each time is a step of its own.
    private static readonly ImmutableArray<string> OnAndOff = ["mask", "unmask", "remask"];

    /// <summary>An operation at a station.</summary>
    public static WorkNode Of(Prep.Operation operation, string id, int? station, Batch? batch, Workplace place)
    {
        var work = Minutes(operation.Hands);
        var unbroken = InOneGo.Contains(operation.Word) && work <= place.LongestOpening;
        var done = OnAndOff.Contains(operation.Word) ? place.Done.FirstOf(operation.Word, operation.Surfaces, work) : place.Done.Of(operation.Word, operation.Surfaces, work);
        return new WorkNode
        {
            Operation = operation,
            Batch = batch,
            Station = station,
            Activity = new Activity
            {
                Id = Batch.StationId(id, station),
                Work = done?.HandsMinutes ?? work,
                Breakable = operation.Breakable && !unbroken,
                Hours = place.Hours,
                // What is wiped for a coat stays dry for it.
                NextStart = BatchDrawing.IsWiped(operation) ? place.AirAround.DryStarts(work) : null,
                Release = place.Done.Release,
                Demands = [new Demand(SharedSpace.People(station), operation.People)],
                Presences = Left(operation, place),
                Avoids =
                [
                    .. operation.MakesDust ? [new Avoidance(SharedSpace.WetFilm)] : Enumerable.Empty<Avoidance>(),
                    .. operation.HotWork ? [new Avoidance(SharedSpace.Vapour)] : Enumerable.Empty<Avoidance>(),
                ],
                Fixed = done?.At,
            },
        };
    }

    /// <summary>An operation that is done for a coat after others of its batch, as often as coats ask for it.</summary>
    /// <param name="coat">The coat.</param>
    /// <param name="operation">The operation.</param>
    /// <param name="place">What the network is drawn from.</param>
    /// <param name="again">What tells it from an earlier time before the same coat; empty for the first.</param>
    public static WorkNode Before(WorkNode coat, Prep.Operation operation, Workplace place, string again = "") =>
        Of(operation, FormattableString.Invariant($"{again}{operation.Id}/{coat.Coat!.Layer}.{coat.Coat.Coat}"), coat.Station, coat.Batch, place);

    // What was wiped on is open until it has flashed off; what is cured by heat stays hot when the hands are off it.
    private static ImmutableArray<Presence> Left(Prep.Operation operation, Workplace place)
    {
        var wait = operation.Wait;
        return
        [
            .. operation.MakesDust ? [new Presence(SharedSpace.Dust)] : Enumerable.Empty<Presence>(),
            .. wait.Kind == Prep.WaitKind.SolventFlash ? [new Presence(SharedSpace.Vapour, 0, Off())] : Enumerable.Empty<Presence>(),
            .. operation.HotWork ? [new Presence(SharedSpace.Heat, 0, wait.Kind == Prep.WaitKind.None ? null : Off())] : Enumerable.Empty<Presence>(),
        ];

        Func<int, int> Off() => place.AirAround.Of(operation.Surfaces).DryingOff(wait);
    }

    /// <summary>A coat of a batch.</summary>
    public static WorkNode Of(CoatTask coat, Batch batch, SurfaceAir air, int productIndex, DoneWork? done, Workplace place)
    {
        var work = Minutes(coat.Hands);
        return new WorkNode
        {
            Coat = coat,
            Batch = batch,
            Station = batch.Station,
            Activity = new Activity
            {
                Id = Batch.StationId(FormattableString.Invariant($"coat/{batch.Name}/{coat.Layer}.{coat.Coat}"), batch.Station),
                Work = done?.HandsMinutes ?? work,
                Hours = place.Hours,
                NextStart = air.FirstStarts(coat, work),
                Release = place.Done.Release,
                Demands =
                [
                    new Demand(SharedSpace.People(batch.Station), 1),
                    .. coat.Sprayed ? [new Demand(SharedSpace.SpraySpots, 1)] : Enumerable.Empty<Demand>(),
                ],
                Presences =
                [
                    new Presence(SharedSpace.WetFilm, productIndex, air.Reaching(coat, FilmStage.Dust)),
                    new Presence(SharedSpace.Vapour, 0, air.Reaching(coat, FilmStage.Touch, place.ClearingMinutes)),
                ],
                Avoids = coat.Sprayed
                    ? [new Avoidance(SharedSpace.WetFilm, productIndex), new Avoidance(SharedSpace.Dust), new Avoidance(SharedSpace.Heat)]
                    : [new Avoidance(SharedSpace.Dust), new Avoidance(SharedSpace.Heat)],
                Fixed = done?.At,
            },
        };
    }

    /// <summary>A point that others wait for.</summary>
    public static WorkNode Milestone(string id) => new() { Activity = new Activity { Id = id } };

    /// <summary>The first minute at or after another at which something could start, as far as hours and weather tell; the largest integer for none.</summary>
    public static int EarliestStart(WorkNode node, int from, Workplace place)
    {
        var (activity, earliest) = (node.Activity, Math.Max(from, place.Done.Release));
        var opens = place.Hours.NextFit(earliest, Math.Min(activity.Work, place.LongestOpening), breakable: false)?.Start ?? int.MaxValue;
        return opens == int.MaxValue || activity.NextStart is null ? opens : activity.NextStart(opens) ?? int.MaxValue;
    }

    /// <summary>Hands-on time in whole minutes, at least one.</summary>
    public static int Minutes(Duration hands) => Math.Max(1, (int)Math.Ceiling(hands.TotalMinutes - 1e-9));
}
