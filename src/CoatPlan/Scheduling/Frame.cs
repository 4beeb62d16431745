using System.Runtime.InteropServices;

namespace CoatPlan.Scheduling;

/// <summary>A network with its names resolved to indexes, checked, and laid out for repeated look-up.</summary>
internal sealed class Frame
{
    private readonly Network network;

    public Frame(Network network)
    {
        ArgumentNullException.ThrowIfNull(network);
        var names = new NetworkNames(network);
        NetworkChecks.Require(network);
        network = Remembered.In(network);
        this.network = network;

        Count = network.Activities.Length;
        Horizon = network.Horizon;
        Activities = [.. network.Activities];
        Capacity = [.. network.Resources.Select(r => r.Capacity)];

        Links = new FrameLink[network.Links.Length];
        for (var l = 0; l < Links.Length; l++)
        {
            Links[l] = LinkOf(network.Links[l], names);
        }

        Incoming = Groups.Of(Count, Links.Length, l => Links[l].To);
        Outgoing = Groups.Of(Count, Links.Length, l => Links[l].From);
        AskedBy = AskedByOf();
        HasChoices = Array.Exists(Links, l => l.IsChoice);
        ChoicesFrom = [.. Outgoing.Select(links => Array.FindAll(links, l => Links[l].IsChoice))];

        Holds = [.. network.Holds.Select(h => new FrameHold(
            names.Resource(h.Resource), h.Amount, names.Activity(h.FromActivity), names.Activity(h.UntilActivity), h.Until)).Where(h => h.Amount > 0)];
        HoldsFrom = Groups.Of(Count, Holds.Length, h => Holds[h].From);
        HoldsUntil = Groups.Of(Count, Holds.Length, h => Holds[h].Until);

        Demands = [.. network.Activities.Select(a => FrameDemand.Of(a, names))];

        Kinds = NumberKinds(network);
        IsFixed = [.. network.Activities.Select(a => a.Fixed is not null)];
        Work = [.. network.Activities.Select(a => a.Work)];
        MostAddedWork = [.. Incoming.Select(MostAddedBy)];
    }

    /// <summary>How many activities there are.</summary>
    public int Count { get; }

    public int Horizon { get; }

    public Activity[] Activities { get; }

    public int[] Capacity { get; }

    public int[] Work { get; }

    /// <summary>For each activity, the work that the dearest windows together would add.</summary>
    public int[] MostAddedWork { get; }

    public bool[] IsFixed { get; }

    public FrameLink[] Links { get; }

    /// <summary>For each activity, the links that point to it.</summary>
    public int[][] Incoming { get; }

    /// <summary>For each activity, the links that are counted from it.</summary>
    public int[][] Outgoing { get; }

    /// <summary>For each activity, the link whose windows ask for it; −1 for one that is always done.</summary>
    public int[] AskedBy { get; }

    /// <summary>For each activity, the links counted from it whose windows ask for activities.</summary>
    public int[][] ChoicesFrom { get; }

    /// <summary>Whether any activity is done only where a window asks for it.</summary>
    public bool HasChoices { get; }

    public FrameHold[] Holds { get; }

    public int[][] HoldsFrom { get; }

    public int[][] HoldsUntil { get; }

    public FrameDemand[][] Demands { get; }

    /// <summary>Kinds of presence, numbered from 0.</summary>
    public Dictionary<int, int> Kinds { get; }

    public string IdOf(int activity) => Activities[activity].Id;

    public string ResourceName(int resource) => network.Resources[resource].Name;

    /// <summary>
    /// The first placement at or after a minute that the activity's own rules permit: release, start rule, hours and horizon.
    /// It never decreases as the minute grows, which every bound in this room relies on.
    /// </summary>
    public Placement? First(int activity, int from, int addedWork = 0)
    {
        var a = Activities[activity];
        if (a.Fixed is { } fact)
        {
            return from <= fact.Start ? fact : null;
        }

        var work = a.Work + addedWork;
        var t = Math.Max(from, a.Release);
        while (true)
        {
            // Hours first: they are quickly asked, and a start rule need not answer for a minute at which nobody works.
            if (FitIn(a, t, work) is not { } fit || fit.End > Horizon)
            {
                return null;
            }

            if (a.NextStart is null)
            {
                return fit;
            }

            if (fit.Start > Horizon || a.NextStart(fit.Start) is not { } permitted)
            {
                return null;
            }

            if (permitted <= fit.Start)
            {
                return fit;
            }

            t = permitted;
        }
    }

    private static Placement? FitIn(Activity activity, int from, int work) =>
        work == 0 ? new Placement(from, from)
        : activity.Hours is null ? new Placement(from, from + work)
        : activity.Hours.NextFit(from, work, activity.Breakable);

    /// <summary>What the activity that opens a hold uses of the same resource meanwhile: its demand, and holds opened with this one.</summary>
    public int OwnUse(int activity, int hold)
    {
        var resource = Holds[hold].Resource;
        var own = 0;
        foreach (var demand in Demands[activity])
        {
            own += demand.Resource == resource ? demand.Amount : 0;
        }

        foreach (var other in HoldsFrom[activity])
        {
            own += other != hold && Holds[other].Resource == resource ? Holds[other].Amount : 0;
        }

        return own;
    }

    /// <summary>When a presence is over, for an activity that ends at a minute.</summary>
    public static int GoneAt(Presence presence, int end) => presence.Until is null ? end : Math.Max(end, presence.Until(end));

    /// <summary>Whether a link's last resort can be done without: what it is counted from may come later until another window is open.</summary>
    public bool MaySpareLastResort(FrameLink link) => link.HasLastResort && !IsFixed[link.From];

    /// <summary>Whether a link says something whichever windows are used.</summary>
    public bool AlwaysSpeaks(FrameLink link) => link.Unless.Length == 0 && AskedBy[link.From] < 0 && AskedBy[link.To] < 0;

    private int MostAddedBy(int[] links)
    {
        var added = 0;
        foreach (var l in links)
        {
            var most = 0;
            foreach (var window in Links[l].Windows)
            {
                most = Math.Max(most, window.AddedWork);
            }

            added += most;
        }

        return added;
    }

    private static FrameLink LinkOf(Link link, NetworkNames names)
    {
        // A frame only reads what is in the array.
        var windows = ImmutableCollectionsMarshal.AsArray(link.Windows)!;
        var plain = new FrameLink(names.Activity(link.From), names.Activity(link.To), windows);
        return link.Unless.IsEmpty && Array.TrueForAll(windows, w => w.Asks.IsEmpty)
            ? plain
            : plain with
            {
                Asks = Array.ConvertAll(windows, w => Sorted(w.Asks, names)),
                Asked = [.. windows.SelectMany(w => w.Asks).Distinct().Select(names.Activity).Order()],
                Unless = Array.ConvertAll(ImmutableCollectionsMarshal.AsArray(link.Unless)!, names.Activity),
            };
    }

    private static int[] Sorted(ImmutableArray<string> asked, NetworkNames names)
    {
        var sorted = Array.ConvertAll(ImmutableCollectionsMarshal.AsArray(asked)!, names.Activity);
        Array.Sort(sorted);
        return sorted;
    }

    private int[] AskedByOf()
    {
        var askedBy = new int[Count];
        Array.Fill(askedBy, -1);
        for (var l = 0; l < Links.Length; l++)
        {
            foreach (var activity in Links[l].Asked)
            {
                askedBy[activity] = Activities[activity].Fixed is null ? l : -1;
            }
        }

        return askedBy;
    }

    private static Dictionary<int, int> NumberKinds(Network network)
    {
        var kinds = new Dictionary<int, int>();
        foreach (var activity in network.Activities)
        {
            foreach (var presence in activity.Presences)
            {
                kinds.TryAdd(presence.Kind, kinds.Count);
            }

            foreach (var avoidance in activity.Avoids)
            {
                kinds.TryAdd(avoidance.Kind, kinds.Count);
            }
        }

        return kinds;
    }
}
