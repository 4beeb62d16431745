using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>The job as a network, with what each activity and link stands for.</summary>
/// <param name="network">The network.</param>
/// <param name="nodes">What its activities stand for, in its order.</param>
/// <param name="links">What its links stand for, in its order.</param>
internal sealed class WorkNetwork(Network network, ImmutableArray<WorkNode> nodes, ImmutableArray<WorkLink> links)
{
    private readonly Lazy<Dictionary<string, int>> places = new(() => PlacesOf(nodes));
    private readonly Lazy<ILookup<string, int>> linksTo = new(() => Enumerable.Range(0, links.Length).ToLookup(l => links[l].Link.To, StringComparer.Ordinal));
    private readonly Lazy<ILookup<string, int>> linksFrom = new(() => Enumerable.Range(0, links.Length).ToLookup(l => links[l].Link.From, StringComparer.Ordinal));

    /// <summary>The network.</summary>
    public Network Network => network;

    /// <summary>What its activities stand for, in its order.</summary>
    public ImmutableArray<WorkNode> Nodes => nodes;

    /// <summary>What its links stand for, in its order.</summary>
    public ImmutableArray<WorkLink> Links => links;

    /// <summary>The place of a node among <see cref="Nodes"/>.</summary>
    /// <param name="id">Its id.</param>
    /// <exception cref="KeyNotFoundException">No node has it.</exception>
    public int IndexOf(string id) => places.Value[id];

    /// <summary>A node; null where none has the id.</summary>
    /// <param name="id">Its id; null for none.</param>
    public WorkNode? Find(string? id) => id is not null && places.Value.TryGetValue(id, out var at) ? nodes[at] : null;

    /// <summary>The links that lead to a node, by their places among <see cref="Links"/>.</summary>
    /// <param name="id">Its id.</param>
    public IEnumerable<int> LinksTo(string id) => linksTo.Value[id];

    /// <summary>The links that lead away from a node, by their places among <see cref="Links"/>.</summary>
    /// <param name="id">Its id.</param>
    public IEnumerable<int> LinksFrom(string id) => linksFrom.Value[id];

    /// <summary>The network without what a schedule of it does not do, and that schedule.</summary>
    public (WorkNetwork Drawn, Schedule Schedule) SettledOn(Schedule schedule)
    {
        var settled = Settling.Of(network, schedule);
        ImmutableArray<WorkLink> used = [.. settled.Links.Select((l, at) => links[l].Settled(settled.Network.Links[at], schedule.WindowInUse[l]))];
        return (
            new WorkNetwork(settled.Network with { Links = [.. used.Select(link => link.Link)] }, [.. settled.Activities.Select(i => nodes[i])], used),
            settled.Schedule);
    }

    private static Dictionary<string, int> PlacesOf(ImmutableArray<WorkNode> nodes)
    {
        var places = new Dictionary<string, int>(nodes.Length, StringComparer.Ordinal);
        for (var i = 0; i < nodes.Length; i++)
            places.Add(nodes[i].Id, i);
        return places;
    }
}
