using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>The job as a network, with what each activity and link stands for.</summary>
/// <param name="network">The network.</param>
/// <param name="nodes">What its activities stand for, in its order.</param>
/// <param name="links">What its links stand for, in its order.</param>
internal sealed class WorkNetwork(Network network, ImmutableArray<WorkNode> nodes, ImmutableArray<WorkLink> links)
{
    private readonly Lazy<Dictionary<string, int>> places = new(() => PlacesOf(nodes));
    private Ends? ends;

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

    /// <summary>The place among <see cref="Nodes"/> of the node that a link is counted from.</summary>
    /// <param name="link">Its place among <see cref="Links"/>.</param>
    public int Leader(int link) => AllEnds.Leaders[link];

    /// <summary>The place among <see cref="Nodes"/> of the node that a link leads to.</summary>
    /// <param name="link">Its place among <see cref="Links"/>.</param>
    public int Follower(int link) => AllEnds.Followers[link];

    /// <summary>The links that lead to a node, by their places among <see cref="Links"/>.</summary>
    /// <param name="node">Its place among <see cref="Nodes"/>.</param>
    public ReadOnlySpan<int> LinksTo(int node) => AllEnds.To[node];

    /// <summary>The links that lead away from a node, by their places among <see cref="Links"/>.</summary>
    /// <param name="node">Its place among <see cref="Nodes"/>.</param>
    public ReadOnlySpan<int> LinksFrom(int node) => AllEnds.From[node];

    /// <summary>The network without what a schedule of it does not do, and that schedule.</summary>
    public (WorkNetwork Drawn, Schedule Schedule) SettledOn(Schedule schedule)
    {
        var settled = Settling.Of(network, schedule);
        ImmutableArray<WorkLink> used = [.. settled.Links.Select((l, at) => links[l].Settled(settled.Network.Links[at], schedule.WindowInUse[l]))];
        return (
            new WorkNetwork(settled.Network with { Links = [.. used.Select(link => link.Link)] }, [.. settled.Activities.Select(i => nodes[i])], used),
            settled.Schedule);
    }

    // Asked of a network that was settled on; most that are drawn are not.
    private Ends AllEnds => ends ??= EndsOf();

    private Ends EndsOf()
    {
        var (leaders, followers) = (new int[links.Length], new int[links.Length]);
        for (var l = 0; l < links.Length; l++)
            (leaders[l], followers[l]) = (IndexOf(links[l].Link.From), IndexOf(links[l].Link.To));
        return new Ends(leaders, followers, Groups.Of(nodes.Length, links.Length, l => leaders[l]), Groups.Of(nodes.Length, links.Length, l => followers[l]));
    }

    private static Dictionary<string, int> PlacesOf(ImmutableArray<WorkNode> nodes)
    {
        var places = new Dictionary<string, int>(nodes.Length, StringComparer.Ordinal);
        for (var i = 0; i < nodes.Length; i++)
            places.Add(nodes[i].Id, i);
        return places;
    }

    private sealed record Ends(int[] Leaders, int[] Followers, int[][] From, int[][] To);
}
