namespace CoatPlan.Scheduling;

/// <summary>
/// Generates schedules in many orders: first those of priority rules, then small changes to the best so far, and where none of those helps any more,
/// from a place some changes away.
/// </summary>
/// <remarks>Source of the method: H. R. Lourenço, O. C. Martin, T. Stützle, "Iterated local search", Handbook of Metaheuristics (2003).</remarks>
internal sealed class LocalSearch
{
    // A network of this many activities gets the passes asked for; above it their number falls with the square, as a pass takes longer too,
    // and below it a search, unlike a draft, grows alike up to so many.
    private const int FullCount = 200;
    private const int LeastSearch = 100;
    private const int MostGrown = 1300;

    private const ulong Seed = 20_010_301;

    // So many passes without a better schedule, and the climb has come to its top; so many small changes lead away from there.
    private const int Patience = 400;
    private const int LeapChanges = 8;

    // Every so many leaps the climb begins anew, at the foot of one of the priority rules.
    private const int LeapsToNewStart = 3;

    private readonly Frame frame;
    private readonly GenerationOrder order;
    private readonly Heads heads;
    private readonly Generator generator;
    private Generator? beside;
    private readonly Func<Schedule, long>? preference;
    private readonly Draws draws;
    private PriorityRules? rules;
    private int[]? groups;
    private Neighbourhood? neighbourhood;
    private readonly int[] anyWindow;
    private readonly int[] noLastResort;
    private readonly bool closes;
    private readonly CancellationToken cancel;
    private readonly List<Candidate> starts = [];

    // Where the climb stands, and the highest it has been.
    private (Candidate From, Worth Worth) here;
    private (Candidate From, Worth Worth) top;
    private int sinceBetter;
    private bool prefers;
    private int leaps;
    private int mostPlaced = -1;

    public LocalSearch(Frame frame, GenerationOrder order, Heads heads, Func<Schedule, long>? preference, int climb, CancellationToken cancel)
    {
        this.frame = frame;
        this.order = order;
        this.heads = heads;
        this.preference = preference;
        this.cancel = cancel;
        draws = new Draws(Seed + (ulong)climb);
        generator = new Generator(frame, order, heads);
        closes = Array.Exists(frame.Links, l => l.Closes);
        anyWindow = new int[frame.Links.Length];
        Array.Fill(anyWindow, Candidate.AnyWindow);
        noLastResort = [.. frame.Links.Select(l => frame.MaySpareLastResort(l) ? Candidate.NoLastResort : Candidate.AnyWindow)];
    }

    /// <summary>The best schedule so far; null when none was found.</summary>
    public Schedule? Best { get; private set; }

    /// <summary>Why the run that placed most came to a stop.</summary>
    public Blockage? Blockage { get; private set; }

    /// <summary>What the run that placed most placed.</summary>
    public ImmutableArray<Placement?> Placed { get; private set; } = [];

    // A quick search makes no small changes, and one near an earlier schedule may need no rules.
    private Neighbourhood Around => neighbourhood ??= new Neighbourhood(frame, draws, AlikeGroups);

    private PriorityRules Rules => rules ??= new PriorityRules(frame, order, heads, AlikeGroups);

    private int[] AlikeGroups => groups ??= Alike.Groups(frame);

    /// <summary>How many passes are worth their time where so many are asked for.</summary>
    public static int PassesFor(int count, int passes)
    {
        var bySize = (int)Math.Min(int.MaxValue, (long)passes * FullCount * FullCount / Math.Max(1, (long)count * count));
        return count >= FullCount ? Math.Max(1, bySize)
            : passes < LeastSearch ? passes
            : Math.Min(bySize, Math.Max(passes, MostGrown));
    }

    /// <summary>
    /// A pass that begins nothing before the minute at which it began before a change, then one in the same order that begins everything as early as it can;
    /// two more where the first does not come to a finish that is good enough.
    /// </summary>
    /// <returns>How many passes were made.</returns>
    public int TryEarlier(EarlierSchedule earlier)
    {
        var ranks = Ranks.Near(earlier.Starts, order);
        var inOrder = new Candidate(ranks, WindowsOf(earlier.Starts));
        // In the same order something may come to begin so early that it stands in the way of something else; the minutes say more than the order.
        Try(inOrder with { NotBefore = earlier.Starts }, urgentFirst: false);
        if (Best?.Finish <= earlier.Enough)
        {
            Try(inOrder, urgentFirst: false);
            return 2;
        }

        TryEach([(inOrder, false), (new Candidate(ranks, anyWindow), false), (new Candidate(ranks, noLastResort), closes)]);
        return 4;
    }

    /// <summary>Up to so many passes in the orders of priority rules.</summary>
    /// <returns>How many passes were made.</returns>
    public int TryRules(int passes)
    {
        var hasLastResort = Array.Exists(frame.Links, frame.MaySpareLastResort);
        var runs = new List<(Candidate From, bool UrgentFirst)>();
        // Where no window closes, or none is a last resort, some are the same.
        foreach (var run in RuleRun.All
            .Select(each => each with { UrgentFirst = each.UrgentFirst && closes, Sparing = each.Sparing && hasLastResort })
            .Distinct()
            .Take(passes))
        {
            starts.Add(new Candidate(Rules.Ranks(run.Rule), run.Sparing ? noLastResort : anyWindow));
            runs.Add((starts[^1], run.UrgentFirst));
        }

        TryEach(runs);
        return runs.Count;
    }

    /// <summary>Up to so many passes that change the best order a little, or at random while there is none; it ends when the finish has come down to a bound.</summary>
    /// <returns>How many passes were made.</returns>
    public int Improve(int passes, int untilFinish)
    {
        for (var made = 0; made < passes; made++)
        {
            cancel.ThrowIfCancellationRequested();
            if (Best is null)
            {
                // Which windows lead nowhere is not known either.
                Try(new Candidate(Around.Shuffled(), made % 2 == 0 ? anyWindow : Around.AnyWindows(anyWindow)), closes);
            }
            else if (Best.Finish <= untilFinish)
            {
                return made;
            }
            else if (sinceBetter++ >= Patience)
            {
                Leap();
            }
            else
            {
                Try(Around.Of(here.From), IsUrgentFirst());
            }
        }

        return passes;
    }

    /// <summary>From here on the finish is no longer brought in: of schedules that finish together the preferred one is looked for.</summary>
    public void Prefer()
    {
        if (Best is null)
        {
            return;
        }

        prefers = true;
        sinceBetter = 0;
        top = top with { Worth = Worth.Of(Best, preference) };
        here = top;
        var sparing = here.From with { Windows = noLastResort };
        TryEach([(sparing, false), (sparing, true)]);
    }

    /// <summary>Takes over a schedule from elsewhere, if it is better, and the order in which it starts activities.</summary>
    public void Adopt(Schedule schedule)
    {
        Consider(schedule, new Candidate([.. Enumerable.Range(0, frame.Count)], anyWindow));
        Try(here.From with { Windows = anyWindow }, urgentFirst: false);
    }

    /// <summary>Makes a schedule in the order of starts, which may not all be possible.</summary>
    public void TryOrder(int[] starts) =>
        Try(new Candidate(Ranks.InOrder(Enumerable.Range(0, frame.Count).OrderBy(i => starts[i]).ThenBy(i => i)), anyWindow), urgentFirst: false);

    // For each choice the window that asks for just what was done before; any where no one does alone.
    private int[] WindowsOf(ImmutableArray<int?> starts)
    {
        int[] windows = [.. anyWindow];
        for (var l = 0; l < windows.Length; l++)
        {
            var link = frame.Links[l];
            if (!link.IsChoice || starts[link.From] is null || starts[link.To] is null)
            {
                continue;
            }

            var done = link.Asked.Where(asked => starts[asked] is not null).ToArray();
            int[] asking = [.. Enumerable.Range(0, link.Windows.Length).Where(k => link.Asks[k].AsSpan().SequenceEqual(done))];
            windows[l] = asking is [var only] ? only : Candidate.AnyWindow;
        }

        return windows;
    }

    private bool IsUrgentFirst() => closes && draws.Below(2) == 0;

    private void Try(Candidate candidate, bool urgentFirst) =>
        Take(generator.Generate(candidate, Best is null ? int.MaxValue : here.Worth.Finish, urgentFirst), candidate);

    // Runs that do not depend on each other, on two threads: how far one gets before it is given up is all that the order in time decides.
    private void TryEach(List<(Candidate From, bool UrgentFirst)> runs)
    {
        var generated = new Generated[runs.Count];
        var (next, finish) = (-1, Best is null ? int.MaxValue : here.Worth.Finish);
        beside ??= new Generator(frame, order, heads);
        Parallel.Invoke(() => GenerateWith(generator), () => GenerateWith(beside));
        cancel.ThrowIfCancellationRequested();
        for (var run = 0; run < runs.Count; run++)
        {
            Take(generated[run], runs[run].From);
        }

        void GenerateWith(Generator own)
        {
            for (var run = Interlocked.Increment(ref next); run < runs.Count && !cancel.IsCancellationRequested; run = Interlocked.Increment(ref next))
            {
                generated[run] = own.Generate(runs[run].From, Volatile.Read(ref finish), runs[run].UrgentFirst);
                if (generated[run].Schedule is { } schedule)
                {
                    Lower(ref finish, schedule.Finish);
                }
            }
        }
    }

    private void Take(Generated generated, Candidate from)
    {
        if (generated.Schedule is { } schedule)
        {
            Consider(schedule, from);
        }
        else if (Best is null && generated.Blockage is not null && generated.PlacedCount > mostPlaced)
        {
            mostPlaced = generated.PlacedCount;
            Blockage = generated.Blockage;
            Placed = generated.Placed;
        }
    }

    private static void Lower(ref int finish, int to)
    {
        for (var known = Volatile.Read(ref finish); to < known;)
        {
            var before = Interlocked.CompareExchange(ref finish, to, known);
            if (before == known)
            {
                return;
            }

            known = before;
        }
    }

    private void Consider(Schedule schedule, Candidate candidate)
    {
        var worth = Worth.Of(schedule, prefers ? preference : null);
        var compared = Best is null ? -1 : worth.CompareTo(here.Worth);
        if (compared > 0)
        {
            return;
        }

        sinceBetter = compared < 0 ? 0 : sinceBetter;
        Stand(schedule, candidate, worth);
    }

    private void Stand(Schedule schedule, Candidate candidate, Worth worth)
    {
        here = (candidate with { Ranks = Ranks.ByStart(schedule, candidate.Ranks), NotBefore = null }, worth);
        if (Best is null || worth.CompareTo(top.Worth) < 0)
        {
            Best = schedule;
            top = here;
        }
    }

    // Away from where nothing better is near: to climb anew from some changes away, from near the best, or from where another rule begins.
    private void Leap()
    {
        sinceBetter = 0;
        if (!prefers && ++leaps % LeapsToNewStart == 0 && LandsOn(starts[draws.Below(starts.Count)]))
        {
            return;
        }

        here = draws.Below(2) == 0 ? top : here;
        var candidate = here.From;
        for (var change = 0; change < LeapChanges; change++)
        {
            candidate = Around.Of(candidate);
        }

        LandsOn(candidate);
    }

    private bool LandsOn(Candidate candidate)
    {
        if (generator.Generate(candidate, int.MaxValue, IsUrgentFirst()).Schedule is not { } schedule)
        {
            return false;
        }

        Stand(schedule, candidate, Worth.Of(schedule, prefers ? preference : null));
        return true;
    }
}
