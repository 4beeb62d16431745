namespace CoatPlan.Scheduling;

/// <summary>A network at several paces of drying, and a schedule of it, laid out for carrying the schedule out thousands of times.</summary>
internal sealed class RepairFrame
{
    // What closes later than this after what it is counted from is not hurried for: half a working day.
    private const int SoonMinutes = 240;

    // Room for what is added on trial and taken back.
    private const int Spare = 8;

    /// <summary>A network and its schedule.</summary>
    /// <param name="paces">The same network with the waits of each pace, at least one; whatever is no wait is taken from the first.</param>
    /// <param name="plan">The schedule whose order is kept.</param>
    /// <param name="redo">For each activity the work of doing it again where it has gone stale; below 0 for one that cannot be.</param>
    /// <param name="order">The order of another frame of the same network and schedule; null: it is worked out.</param>
    /// <exception cref="ArgumentException">The networks are not the same, or the schedule is not one of them.</exception>
    public RepairFrame(ImmutableArray<Network> paces, Schedule plan, ImmutableArray<int> redo, int[]? order = null)
    {
        if (paces.IsDefaultOrEmpty || paces.Any(network => network.Activities.Length != plan.Placements.Length || network.Links.Length != plan.WindowInUse.Length))
        {
            throw new ArgumentException(FormattableString.Invariant(
                $"Every network must have the schedule's {plan.Placements.Length} activities and {plan.WindowInUse.Length} links."), nameof(paces));
        }

        var network = paces[0];
        Count = network.Activities.Length;
        Horizon = network.Horizon;
        Activities = [.. network.Activities];
        Redo = [.. redo];
        IsFact = [.. network.Activities.Select(a => a.Fixed is not null)];
        Facts = [.. Enumerable.Range(0, Count).Where(i => IsFact[i] && IsDoneIn(plan, i)).OrderBy(i => Activities[i].Fixed!.Value.Start)];
        NextStart = [.. network.Activities.Select(a => RememberedStarts.Of(a.NextStart))];
        LongestOpening = [.. network.Activities.Select(a => a.Hours is { } hours ? hours.Openings.Select(o => o.Closes - o.Opens).DefaultIfEmpty(0).Max() : int.MaxValue)];

        var names = new NetworkNames(network);
        Links = [.. Enumerable.Range(0, network.Links.Length).Select(l => LinkOf(paces, l, names, plan))];
        AskedBy = new int[Count];
        Array.Fill(AskedBy, -1);
        for (var l = 0; l < Links.Length; l++)
        {
            foreach (var asked in Links[l].Asked)
            {
                AskedBy[asked] = l;
            }
        }

        Incoming = Groups.Of(Count, Links.Length, l => Links[l].To);
        ClosingTo = Groups.Of(Count, Links.Length, l => Links[l].Closes ? Links[l].To : -1);
        ChoicesTo = Groups.Of(Count, Links.Length, l => Links[l].Windows > 1 ? Links[l].To : -1);
        TightFrom = Groups.Of(Count, Links.Length, l => !Links[l].IsSilent && Links[l].Windows == 1 && Redo[Links[l].From] >= 0 && Links[l].Most[0][0] is { Constant: not null } ? Links[l].From : -1);
        ClosingFrom = Groups.Of(Count, Links.Length, l => Links[l].Closes && !IsFact[Links[l].To] && !(Links[l].Most[0][0]?.Constant > SoonMinutes) ? Links[l].From : -1);
        ChainNext = [.. Enumerable.Range(0, Count).Select(ChainNextOf)];
        MostWindows = Links.Length == 0 ? 0 : Links.Max(link => link.Windows);

        Capacity = [.. network.Resources.Select(r => r.Capacity)];
        Demands = [.. network.Activities.Select(a => FrameDemand.Of(a, names))];
        var holds = network.Holds.Select((hold, h) => new RepairHold(
            names.Resource(hold.Resource), hold.Amount, names.Activity(hold.FromActivity), names.Activity(hold.UntilActivity),
            [.. paces.Select(pace => Remembered.Of(pace.Holds[h].Until))])).Where(hold => hold.Amount > 0).ToArray();
        HoldsFrom = [.. Enumerable.Range(0, Count).Select(i => holds.Where(hold => hold.From == i).ToArray())];
        HoldsUntil = [.. Enumerable.Range(0, Count).Select(i => holds.Where(hold => hold.Until == i).ToArray())];

        var kinds = network.Activities.SelectMany(a => a.Presences.Select(p => p.Kind).Concat(a.Avoids.Select(v => v.Kind))).Distinct().Order().ToList();
        Presences = [.. network.Activities.Select((a, i) => a.Presences.Select((presence, p) => new RepairPresence(
            kinds.IndexOf(presence.Kind), presence.Key,
            [.. paces.Select(pace => Remembered.Of(pace.Activities[i].Presences[p].Until))])).ToArray())];
        Avoids = [.. network.Activities.Select(a => a.Avoids.Select(v => v with { Kind = kinds.IndexOf(v.Kind) }).ToArray())];
        Leavers = [.. kinds.Select((_, kind) => Presences.Sum(of => of.Count(p => p.Kind == kind)) + Spare)];
        Avoiders = [.. kinds.Select((_, kind) => Avoids.Sum(of => of.Count(v => v.Kind == kind)) + Spare)];
        Order = order ?? OrderOf(network, plan);
    }

    public int Count { get; }

    public int Horizon { get; }

    public Activity[] Activities { get; }

    /// <summary>All activities in the order in which the schedule begins them; what it does not do stands before what it would have been done for.</summary>
    public int[] Order { get; }

    public bool[] IsFact { get; }

    public int[] Facts { get; }

    public int[] Redo { get; }

    public RememberedStarts?[] NextStart { get; }

    public int[] LongestOpening { get; }

    public RepairLink[] Links { get; }

    public int[] AskedBy { get; }

    public int[][] Incoming { get; }

    /// <summary>For each activity, the links to it that close.</summary>
    public int[][] ClosingTo { get; }

    /// <summary>For each activity, the links to it with several windows.</summary>
    public int[][] ChoicesTo { get; }

    /// <summary>For each activity that can be done again, the links from it that close after the same time whatever the minute.</summary>
    public int[][] TightFrom { get; }

    /// <summary>For each activity, the links from it that close soon after it.</summary>
    public int[][] ClosingFrom { get; }

    /// <summary>For each activity that cannot be done again, the link to the one that the plan has follow it in a window that closes; −1 for none.</summary>
    public int[] ChainNext { get; }

    public int MostWindows { get; }

    public int[] Capacity { get; }

    public FrameDemand[][] Demands { get; }

    public RepairHold[][] HoldsFrom { get; }

    public RepairHold[][] HoldsUntil { get; }

    public RepairPresence[][] Presences { get; }

    public Avoidance[][] Avoids { get; }

    /// <summary>For each kind, how many presences there can be at most.</summary>
    public int[] Leavers { get; }

    /// <summary>For each kind, how many avoidances there can be at most.</summary>
    public int[] Avoiders { get; }

    private int ChainNextOf(int activity)
    {
        for (var l = 0; Redo[activity] < 0 && l < Links.Length; l++)
        {
            var link = Links[l];
            if (link.From == activity && !IsFact[link.To] && Redo[link.To] < 0 && link.Most[0][link.Planned] is not null)
            {
                return l;
            }
        }

        return -1;
    }

    private static RepairLink LinkOf(ImmutableArray<Network> paces, int l, NetworkNames names, Schedule plan)
    {
        var link = paces[0].Links[l];
        var asks = link.Windows.Select(w => w.Asks.Select(names.Activity).Order().ToArray()).ToArray();
        return new RepairLink
        {
            From = names.Activity(link.From),
            To = names.Activity(link.To),
            Least = [.. paces.Select(pace => pace.Links[l].Windows.Select(w => new RepairWait(w.Least)).ToArray())],
            Most = [.. paces.Select(pace => pace.Links[l].Windows.Select(w => w.Most is { } most ? new RepairWait(most) : (RepairWait?)null).ToArray())],
            AddedWork = [.. link.Windows.Select(w => w.AddedWork)],
            Asks = asks,
            Asked = [.. asks.SelectMany(asked => asked).Distinct().Order()],
            Unless = [.. link.Unless.Select(names.Activity)],
            Planned = Math.Max(0, plan.WindowInUse[l]),
            IsSilent = plan.WindowInUse[l] < 0 && IsDoneIn(plan, names.Activity(link.From)) && IsDoneIn(plan, names.Activity(link.To)),
            Closes = link.Windows.Any(w => w.Most is not null),
        };
    }

    private static bool IsDoneIn(Schedule plan, int activity) => plan.Skipped.IsDefaultOrEmpty || !plan.Skipped[activity];

    // By start, moments before the work that begins with them; what has the same times is told apart by who waits for whom.
    private int[] OrderOf(Network network, Schedule plan)
    {
        var rank = Ranks.InOrder(GenerationOrder.Of(new Frame(network)).Sequence);

        return
        [
            .. Enumerable.Range(0, Count)
                .OrderBy(i => TimeOf(i).Start)
                .ThenBy(i => TimeOf(i).End)
                .ThenBy(i => rank[i]),
        ];

        Placement TimeOf(int i)
        {
            if (IsDoneIn(plan, i))
            {
                return plan.Placements[i];
            }

            var before = plan.Placements[Links[AskedBy[i]].To].Start;
            return new Placement(before, before);
        }
    }
}
