using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Timetable;

namespace CoatPlan;

/// <summary>When to start a job: every start worth having in its forecast, best first.</summary>
/// <remarks>
/// Each opening of the crew's hours is tried, from the job's start to the end of its forecast file, or for a week where the weather is the same every day. Of
/// a job that has begun, the moment at which it goes on is what is tried. A start that another beats in everything is left out, but for the job's own.
/// </remarks>
public static class StartTimes
{
    // Weather that repeats daily differs by the crew's hours alone, and those by the week.
    private const int DaysOfSameWeather = 7;

    // A typical year has no end; four weeks of it are as far as anybody plans a weekend.
    private const int DaysOfTypicalYear = 28;

    // The first few are planned as well as they can be, so that what is said of them is what the plan says; of a large job the first alone.
    private const int PlannedInFull = 3;
    private const int ManySurfaces = 10;

    /// <summary>The starts worth having: those that meet <c>finish-by</c> first, then by finish, waiting, margin; equal ones the latest first.</summary>
    /// <param name="ready">The job.</param>
    /// <param name="progress">Takes the share of the starts that were tried, 0 to 1; null for none.</param>
    /// <param name="cancel">Stops the trials.</param>
    /// <returns>Empty: from no start could the whole job be done.</returns>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static ImmutableArray<StartTime> Of(ReadyJob ready, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(ready);
        var work = ready.Groundwork.Prepared;
        var moments = Moments(ready);
        var full = ready.Job.Surfaces.Length * ready.Job.Crew.Stations > ManySurfaces ? 1 : PlannedInFull;
        var found = Tried(moments, moment => Try(ready, work, moment, SearchDepth.Quick), progress, moments.Length + full, cancel);
        var own = ready.Job.AsOf ?? ready.Job.Start;
        var worth = Ranked(Undominated(found));

        // The job's own start is what the others are weighed against: it is planned in full whatever its first plan came to.
        var inFull = ImmutableHashSet<LocalDateTime>.Empty;
        while (worth.Where((start, rank) => (rank < full || start.Start == own) && !inFull.Contains(start.Start)).ToArray() is { Length: > 0 } left)
        {
            ImmutableArray<LocalDateTime> again = [.. left.Select(start => start.Start)];
            var better = Tried(again, moment => Try(ready, work, moment, SearchDepth.Full), null, 1, cancel);
            inFull = inFull.Union(again);
            worth = Ranked([.. worth.Where(start => !again.Contains(start.Start)), .. better]);
        }

        progress?.Report(1);
        return Undominated(worth);

        ImmutableArray<StartTime> Undominated(ImmutableArray<StartTime> starts) => [.. starts.Where(start => start.Start == own || !starts.Any(start.IsDominatedBy))];
    }

    private static ImmutableArray<StartTime> Ranked(ImmutableArray<StartTime> starts) =>
    [
        .. starts
            .OrderByDescending(start => start.Meets)
            .ThenBy(start => start.Finish)
            .ThenBy(start => start.WaitH)
            .ThenByDescending(start => start.LeastMarginC ?? double.PositiveInfinity)
            .ThenByDescending(start => start.Start),
    ];

    // Each trial stands alone, and its answer has its own place: the same starts on any number of cores.
    private static ImmutableArray<StartTime> Tried(
        ImmutableArray<LocalDateTime> moments, Func<LocalDateTime, StartTime?> attempt, IProgress<double>? progress, int of, CancellationToken cancel)
    {
        var found = new StartTime?[moments.Length];
        var tried = 0;
        Parallel.For(0, moments.Length, new ParallelOptions { CancellationToken = cancel }, i =>
        {
            found[i] = attempt(moments[i]);
            progress?.Report((double)Interlocked.Increment(ref tried) / of);
        });
        return [.. found.OfType<StartTime>()];
    }

    private static StartTime? Try(ReadyJob ready, PreparedJob work, LocalDateTime moment, SearchDepth depth)
    {
        var (job, catalogue) = (At(ready.Job, moment), ready.Trade.Catalogue);
        var climate = PlaceClimate.Of(job.Place, job.Start, ClimateFigures.Of(catalogue), ready.Forecast);
        if (StartTrial.Of(Timetabling.Settle(job, work.Sequence, work.Coats, new AirAround(new SurfaceAirs(climate), job, catalogue), catalogue, depth)) is not { } trial)
            return null;

        var finish = job.Start.PlusMinutes(trial.FinishMinute);
        return new StartTime(moment, finish, !(finish > job.FinishBy), trial.LeastMarginKelvin, trial.WaitMinutes / 60.0);
    }

    /// <summary>The job with its start moved, or with the moment moved from which the rest of it is done.</summary>
    /// <param name="job">The job.</param>
    /// <param name="moment">Local wall time.</param>
    internal static Job At(Job job, LocalDateTime moment) => job.Done.IsEmpty ? job with { Start = moment, AsOf = null } : job with { AsOf = moment };

    private static ImmutableArray<LocalDateTime> Moments(ReadyJob ready)
    {
        var job = ready.Job;
        var from = job.AsOf is { } now ? LocalDateTime.Max(job.Start, now) : job.Start;
        if (ready.Forecast is { Repeats: false } file)
            from = LocalDateTime.Max(from, file.Rows[0].Time);

        var clock = new Clock(from);
        var until = clock.MinuteAtOrAfter(EndOfForecast(ready, from));
        return
        [
            .. CrewHours.Spans(job.Crew, clock)
                .Select(span => Math.Max(0, span.From))
                .Where(minute => minute < until)
                .Distinct()
                .Order()
                .Select(clock.At),
        ];
    }

    private static LocalDateTime EndOfForecast(ReadyJob ready, LocalDateTime from) => ready.Forecast switch
    {
        null => from.PlusDays(DaysOfSameWeather),
        { Repeats: true } => from.PlusDays(DaysOfTypicalYear),
        { Rows: var rows } => LocalDateTime.Min(rows[^1].Time, from.PlusDays(Clock.HorizonDays)),
    };
}
