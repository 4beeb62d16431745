namespace CoatPlan.Scheduling;

/// <summary>Generates schedules in many orders: first those of priority rules, then small changes to the best order so far.</summary>
internal sealed class LocalSearch
{
    // A network of this many activities gets the passes asked for; above it their number falls with the square, as a pass takes longer too,
    // and below it a search, unlike a draft, grows alike up to so many.
    private const int FullCount = 200;
    private const int LeastSearch = 100;
    private const int MostGrown = 1300;

    private const ulong Seed = 20_010_301;

    private readonly Frame frame;
    private readonly GenerationOrder order;
    private readonly Heads heads;
    private readonly Generator generator;
    private readonly Func<Schedule, long>? preference;
    private readonly Draws draws = new(Seed);
    private readonly int[] choices;
    private readonly int[] anyWindow;
    private readonly int[] groups;
    private readonly bool closes;
    private readonly int[][] chains;

    private int[] bestRanks = [];
    private int[] bestWindows = [];
    private Worth bestWorth;
    private bool prefers;
    private int mostPlaced = -1;

    public LocalSearch(Frame frame, GenerationOrder order, Heads heads, Func<Schedule, long>? preference)
    {
        this.frame = frame;
        this.order = order;
        this.heads = heads;
        this.preference = preference;
        generator = new Generator(frame, order, heads);
        groups = Alike.Groups(frame);
        chains = Chains.Of(frame);
        closes = Array.Exists(frame.Links, l => l.Closes);
        anyWindow = new int[frame.Links.Length];
        Array.Fill(anyWindow, -1);
        choices = [.. Enumerable.Range(0, frame.Links.Length).Where(l => frame.Links[l].Windows.Length > 1)];
    }

    /// <summary>The best schedule so far; null when none was found.</summary>
    public Schedule? Best { get; private set; }

    /// <summary>Why the run that placed most came to a stop.</summary>
    public Blockage? Blockage { get; private set; }

    /// <summary>What the run that placed most placed.</summary>
    public ImmutableArray<Placement?> Placed { get; private set; } = [];

    /// <summary>How many passes are worth their time where so many are asked for.</summary>
    public static int PassesFor(int count, int passes)
    {
        var bySize = (int)Math.Min(int.MaxValue, (long)passes * FullCount * FullCount / Math.Max(1, (long)count * count));
        return count >= FullCount ? Math.Max(1, bySize)
            : passes < LeastSearch ? passes
            : Math.Min(bySize, Math.Max(passes, MostGrown));
    }

    /// <summary>One pass for each of up to so many priority rules.</summary>
    /// <returns>How many passes were made.</returns>
    public int TryRules(int passes)
    {
        var made = 0;
        foreach (var ranks in Ranks.ByRules(frame, order, heads))
        {
            if (closes && made < passes)
            {
                Try(ranks, anyWindow, urgentFirst: true);
                made++;
            }

            if (made == passes)
            {
                break;
            }

            Try(ranks, anyWindow, urgentFirst: false);
            made++;
        }

        return made;
    }

    /// <summary>Up to so many passes that change the best order a little, or at random while there is none; it ends when the finish has come down to a bound.</summary>
    /// <returns>How many passes were made.</returns>
    public int Improve(int passes, int untilFinish)
    {
        for (var made = 0; made < passes; made++)
        {
            if (Best is null)
            {
                Try(Shuffled(), anyWindow, closes);
                continue;
            }

            if (Best.Finish <= untilFinish)
            {
                return made;
            }

            var (ranks, windows) = Neighbour();
            Try(ranks, windows, closes && draws.Below(2) == 0);
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
        bestWorth = Worth.Of(Best, preference);
    }

    /// <summary>Takes over a schedule from elsewhere, if it is better, and the order in which it starts activities.</summary>
    public void Adopt(Schedule schedule)
    {
        Consider(schedule, [.. Enumerable.Range(0, frame.Count)], anyWindow);
        Try(bestRanks, anyWindow, urgentFirst: false);
    }

    /// <summary>Makes a schedule in the order of starts, which may not all be possible.</summary>
    public void TryOrder(int[] starts) =>
        Try(Ranks.InOrder(Enumerable.Range(0, frame.Count).OrderBy(i => starts[i]).ThenBy(i => i)), anyWindow, urgentFirst: false);

    private void Try(int[] ranks, int[] windows, bool urgentFirst)
    {
        if (!generator.Run(ranks, windows, Best?.Finish ?? int.MaxValue, urgentFirst))
        {
            if (Best is null && generator.Blockage is not null && generator.PlacedCount > mostPlaced)
            {
                mostPlaced = generator.PlacedCount;
                Blockage = generator.Blockage;
                Placed = generator.Placed;
            }

            return;
        }

        Consider(generator.ToSchedule(), ranks, windows);
    }

    private void Consider(Schedule schedule, int[] ranks, int[] windows)
    {
        var worth = Worth.Of(schedule, prefers ? preference : null);
        if (Best is null || worth.CompareTo(bestWorth) < 0)
        {
            Best = schedule;
            bestWorth = worth;
        }

        if (worth.CompareTo(bestWorth) <= 0)
        {
            bestRanks = Ranks.ByStart(schedule, ranks);
            bestWindows = windows;
        }
    }

    private int[] Shuffled()
    {
        var sequence = Enumerable.Range(0, frame.Count).ToArray();
        for (var i = sequence.Length - 1; i > 0; i--)
        {
            var j = draws.Below(i + 1);
            (sequence[i], sequence[j]) = (sequence[j], sequence[i]);
        }

        return Ranks.InOrder(sequence);
    }

    // Brings an activity's like from some way around it next to it.
    private void GatherAlike(List<int> sequence)
    {
        var at = draws.Below(sequence.Count);
        var group = groups[sequence[at]];
        if (group < 0)
        {
            return;
        }

        var reach = 1 + draws.Below(sequence.Count);
        var from = Math.Max(0, at - reach);
        var until = Math.Min(sequence.Count, at + reach + 1);
        var before = sequence[from..at].Where(i => groups[i] != group).ToArray();
        var alike = sequence[from..until].Where(i => groups[i] == group).ToArray();
        var after = sequence[at..until].Where(i => groups[i] != group).ToArray();
        sequence.RemoveRange(from, until - from);
        sequence.InsertRange(from, before.Concat(alike).Concat(after).ToArray());
    }

    // Brings all or the end of a chain before or after something else.
    private void MoveChain(List<int> sequence)
    {
        var chain = chains[draws.Below(chains.Length)];
        var from = draws.Below(2) == 0 ? 0 : draws.Below(chain.Length);
        var members = sequence.Where(i => Array.IndexOf(chain, i) >= 0).Skip(from).ToArray();
        var first = sequence.IndexOf(members[0]);
        sequence.RemoveAll(i => Array.IndexOf(members, i) >= 0);
        var reach = 1 + draws.Below(Math.Max(1, sequence.Count / 2));
        sequence.InsertRange(Math.Clamp(first + (draws.Below(2) == 0 ? -reach : reach), 0, sequence.Count), members);
    }

    private (int[] Ranks, int[] Windows) Neighbour()
    {
        var windows = bestWindows;
        if (choices.Length > 0 && draws.Below(3) == 0)
        {
            windows = [.. bestWindows];
            var link = choices[draws.Below(choices.Length)];
            windows[link] = draws.Below(frame.Links[link].Windows.Length + 1) - 1;
        }

        var sequence = new List<int>(Enumerable.Range(0, frame.Count).OrderBy(i => bestRanks[i]));
        if (chains.Length > 1 && draws.Below(2) == 0)
        {
            MoveChain(sequence);
            return (Ranks.InOrder(sequence), windows);
        }

        if (draws.Below(4) == 0)
        {
            GatherAlike(sequence);
        }

        for (var moves = 1 + draws.Below(3); moves > 0; moves--)
        {
            var from = draws.Below(sequence.Count);
            var reach = 1 + draws.Below(Math.Max(1, sequence.Count / 2));
            var to = Math.Clamp(from + (draws.Below(2) == 0 ? -reach : reach), 0, sequence.Count - 1);
            var moved = sequence[from];
            sequence.RemoveAt(from);
            sequence.Insert(to, moved);
        }

        return (Ranks.InOrder(sequence), windows);
    }
}
