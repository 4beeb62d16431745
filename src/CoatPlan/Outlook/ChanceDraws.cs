using CoatPlan.Scheduling;

namespace CoatPlan.Outlook;

/// <summary>Draws of a chance: each carries the plan out under its own luck and its own weather. The same on any number of cores.</summary>
internal sealed class ChanceDraws
{
    // Every so many draws somebody may look at the progress, stop it, or lend a hand.
    private const int Between = 20;

    // A second thread gets ready for a kind of weather, as the first had to, where so many of its draws are left.
    private const int WorthAHand = 80;

    // What each cause costs is asked of the first draws alone: each is carried out once more for each cause.
    private const int CostDraws = 120;

    private readonly ChanceModel model;
    private readonly int[] finishes;
    private readonly long[][] earlier;
    private readonly int[] asTold;
    private readonly int[] taken;
    private int begun = -1;

    private ChanceDraws(ChanceModel model, int draws, bool withCosts)
    {
        this.model = model;
        finishes = new int[draws];
        earlier = [.. model.Weathers.Select(_ => new long[model.Causes.Length])];
        asTold = new int[withCosts ? Math.Min(CostDraws, draws) : 0];
        taken = new int[model.Weathers.Length];
    }

    /// <summary>The finish in each draw, minutes from the start; <see cref="Repair.Never"/> where something found no time within the horizon.</summary>
    public ReadOnlySpan<int> Finishes => finishes;

    /// <summary>Carries the plan out as often as is asked.</summary>
    /// <param name="model">The job.</param>
    /// <param name="draws">How many, 1 or more.</param>
    /// <param name="withCosts">Whether <see cref="Costs"/> will be asked for, which takes runs of its own.</param>
    /// <param name="report">Takes the number of draws that have been done since it was last called; from several threads at once.</param>
    /// <param name="cores">How many threads at most; −1 for as many as there are cores.</param>
    /// <param name="cancel">Stops the draws.</param>
    public static ChanceDraws Of(ChanceModel model, int draws, bool withCosts, Action<int>? report, int cores, CancellationToken cancel)
    {
        var drawn = new ChanceDraws(model, draws, withCosts);

        // A kind of weather is one piece of work: most of what it takes to get it ready is learnt from its first draws, and good for all of them.
        var hands = new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = cores };
        Parallel.For(0, model.Weathers.Length, hands, _ => drawn.CarryOutWhatIsLeft(report, cancel));
        return drawn;
    }

    /// <summary>What each cause costs, dearest first; those that cost nothing left out. Empty where costs were not asked for.</summary>
    public ImmutableArray<ChanceCost> Costs()
    {
        var counted = Enumerable.Range(0, asTold.Length).Where(draw => finishes[draw] != Repair.Never).ToArray();
        if (counted.Length == 0)
            return [];

        var minutes = Enumerable.Range(0, model.Causes.Length).Select(cause => earlier.Sum(ofKind => ofKind[cause])).ToArray();
        minutes[model.WeatherCause] = counted.Sum(draw => (long)Saved(finishes[draw], asTold[draw]));
        return
        [
            .. model.Causes
                .Select((what, cause) => new ChanceCost(what, (double)minutes[cause] / counted.Length))
                .Where(cost => cost.Minutes >= 1)
                .OrderByDescending(cost => cost.Minutes)
                .ThenBy(cost => cost.What, StringComparer.Ordinal),
        ];
    }

    // One kind of weather after another, the one as told first, since it has most to do; who finds none left to begin lends a hand with what has most left.
    // A thread leaves when nothing is left, not after a share of the kinds: those differ too much for shares.
    private void CarryOutWhatIsLeft(Action<int>? report, CancellationToken cancel)
    {
        for (int next; (next = Interlocked.Increment(ref begun)) < taken.Length;)
            CarryOut((model.WeatherAsTold + next) % taken.Length, next == 0, report, cancel);
        while (MostLeft() is { } other)
            CarryOut(other, false, report, cancel);
    }

    private int? MostLeft()
    {
        var most = Enumerable.Range(0, taken.Length).MaxBy(Left);
        return Left(most) >= WorthAHand ? most : null;
    }

    private int Left(int kind) => DrawsOf(kind) - Volatile.Read(ref taken[kind]);

    // The draws of one kind of weather are every so manieth.
    private int DrawsOf(int kind) => (finishes.Length - kind + taken.Length - 1) / taken.Length;

    private void CarryOut(int kind, bool isAsTold, Action<int>? report, CancellationToken cancel)
    {
        if (DrawsOf(kind) == 0 && !isAsTold)
            return;

        var (air, dewPoint) = model.Weathers[kind];
        var (repair, luck, minutes) = (model.In(air, dewPoint), new Luck(model), new long[model.Causes.Length]);
        if (isAsTold)
            CarryOutAsTold(repair, luck, cancel);

        for (int first; (first = Interlocked.Add(ref taken[kind], Between) - Between) < DrawsOf(kind);)
        {
            cancel.ThrowIfCancellationRequested();
            var until = Math.Min(first + Between, DrawsOf(kind));
            for (var of = first; of < until; of++)
                CarryOut(kind + (of * taken.Length), repair, luck, minutes);
            report?.Invoke(until - first);
        }

        lock (earlier[kind])
        {
            for (var cause = 0; cause < minutes.Length; cause++)
                earlier[kind][cause] += minutes[cause];
        }
    }

    private void CarryOut(int draw, Repair repair, Luck luck, long[] minutes)
    {
        luck.Draw(draw);
        finishes[draw] = repair.Run(luck.Work, luck.Paces);
        if (draw < asTold.Length && finishes[draw] != Repair.Never)
            CarryOutWithOneAsPlanned(draw, repair, luck, minutes);
    }

    private void CarryOutWithOneAsPlanned(int draw, Repair repair, Luck luck, long[] minutes)
    {
        for (var cause = 0; cause < model.WeatherCause; cause++)
        {
            if (luck.LeaveAsPlanned(cause))
                minutes[cause] += Saved(finishes[draw], repair.Run(luck.Work, luck.Paces));
        }
    }

    private void CarryOutAsTold(Repair repair, Luck luck, CancellationToken cancel)
    {
        for (var draw = 0; draw < asTold.Length; draw++)
        {
            cancel.ThrowIfCancellationRequested();
            luck.Draw(draw);
            asTold[draw] = repair.Run(luck.Work, luck.Paces);
        }
    }

    private static int Saved(int finish, int asPlanned) => asPlanned == Repair.Never ? 0 : finish - asPlanned;
}
