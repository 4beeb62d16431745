using CoatPlan.Scheduling;

namespace CoatPlan.Outlook;

/// <summary>Draws of a chance: each carries the plan out under its own luck and its own weather. The same on any number of cores.</summary>
internal static class ChanceDraws
{
    // Every so many draws somebody may look at the progress, or stop it.
    private const int Between = 50;

    // What each cause costs is asked of the first draws alone: each is carried out once more for each cause.
    private const int CostDraws = 200;

    // A piece of work for one core: small enough that two cores end together.
    private const int ChunkDraws = 500;

    /// <summary>The finish in each draw, minutes from the start; <see cref="Repair.Never"/> where something found no time within the horizon.</summary>
    /// <param name="model">The job.</param>
    /// <param name="draws">How many, 1 or more.</param>
    /// <param name="report">Takes the number of draws that have been done since it was last called; from several threads at once.</param>
    /// <param name="cores">How many threads at most; −1 for as many as there are cores.</param>
    /// <param name="cancel">Stops the draws.</param>
    public static int[] Finishes(ChanceModel model, int draws, Action<int>? report, int cores, CancellationToken cancel)
    {
        var finishes = new int[draws];
        var kinds = model.Weathers.Length;
        var chunks = Enumerable.Range(0, kinds).SelectMany(kind => Chunks(kind, draws, kinds)).ToArray();
        Parallel.ForEach(chunks, new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = cores }, chunk =>
        {
            var (air, dewPoint) = model.Weathers[chunk.Kind];
            var (repair, luck, since) = (model.In(air, dewPoint), new Luck(model), 0);
            for (var draw = chunk.First; draw < chunk.End; draw += kinds)
            {
                luck.Draw(draw);
                finishes[draw] = repair.Run(luck.Work, luck.Paces);
                if (++since == Between)
                {
                    cancel.ThrowIfCancellationRequested();
                    report?.Invoke(since);
                    since = 0;
                }
            }

            report?.Invoke(since);
        });
        return finishes;
    }

    /// <summary>What each cause costs, dearest first; those that cost nothing left out.</summary>
    /// <param name="model">The job.</param>
    /// <param name="finishes">The finish in each draw.</param>
    /// <param name="cores">How many threads at most; −1 for as many as there are cores.</param>
    /// <param name="cancel">Stops it.</param>
    public static ImmutableArray<ChanceCost> Costs(ChanceModel model, int[] finishes, int cores, CancellationToken cancel)
    {
        var draws = Enumerable.Range(0, Math.Min(CostDraws, finishes.Length)).Where(draw => finishes[draw] != Repair.Never).ToArray();
        if (draws.Length == 0)
            return [];

        var kinds = model.Weathers.Length;
        var earlier = new long[kinds + 1][];
        Parallel.For(0, kinds + 1, new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = cores }, kind =>
            earlier[kind] = kind == kinds ? WithWeatherAsTold(model, draws, finishes, cancel) : WithOneAsPlanned(model, kind, draws, finishes, cancel));
        return
        [
            .. model.Causes
                .Select((what, cause) => new ChanceCost(what, (double)earlier.Sum(minutes => minutes[cause]) / draws.Length))
                .Where(cost => cost.Minutes >= 1)
                .OrderByDescending(cost => cost.Minutes)
                .ThenBy(cost => cost.What, StringComparer.Ordinal),
        ];
    }

    private static long[] WithOneAsPlanned(ChanceModel model, int kind, int[] draws, int[] finishes, CancellationToken cancel)
    {
        var earlier = new long[model.Causes.Length];
        var own = draws.Where(draw => draw % model.Weathers.Length == kind).ToArray();
        if (own.Length == 0)
            return earlier;

        var (air, dewPoint) = model.Weathers[kind];
        var (repair, luck) = (model.In(air, dewPoint), new Luck(model));
        foreach (var draw in own)
        {
            cancel.ThrowIfCancellationRequested();
            for (var cause = 0; cause < model.WeatherCause; cause++)
            {
                luck.Draw(draw, cause);
                earlier[cause] += Difference(finishes[draw], repair.Run(luck.Work, luck.Paces));
            }
        }

        return earlier;
    }

    private static long[] WithWeatherAsTold(ChanceModel model, int[] draws, int[] finishes, CancellationToken cancel)
    {
        var earlier = new long[model.Causes.Length];
        if (model.Weathers.Length == 1)
            return earlier;

        var (repair, luck) = (model.In(UnitsNet.TemperatureDelta.Zero, UnitsNet.TemperatureDelta.Zero), new Luck(model));
        foreach (var draw in draws)
        {
            cancel.ThrowIfCancellationRequested();
            luck.Draw(draw);
            earlier[model.WeatherCause] += Difference(finishes[draw], repair.Run(luck.Work, luck.Paces));
        }

        return earlier;
    }

    private static long Difference(int finish, int asPlanned) => asPlanned == Repair.Never ? 0 : finish - asPlanned;

    // The draws of one kind of weather are every so manieth; a chunk is some of those in a row.
    private static IEnumerable<(int Kind, int First, int End)> Chunks(int kind, int draws, int kinds)
    {
        for (var first = kind; first < draws; first += ChunkDraws * kinds)
            yield return (kind, first, Math.Min(draws, first + ChunkDraws * kinds));
    }
}
