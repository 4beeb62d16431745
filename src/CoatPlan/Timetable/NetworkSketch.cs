using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>A network while it is being drawn up; what is handed on is the finished <see cref="WorkNetwork"/>.</summary>
internal sealed class NetworkSketch
{
    private readonly ImmutableArray<WorkNode>.Builder nodes = ImmutableArray.CreateBuilder<WorkNode>();
    private readonly ImmutableArray<WorkLink>.Builder links = ImmutableArray.CreateBuilder<WorkLink>();
    private readonly ImmutableArray<Hold>.Builder holds = ImmutableArray.CreateBuilder<Hold>();
    private readonly Dictionary<string, WorkNode> byId = new(StringComparer.Ordinal);
    private readonly HashSet<string> followed = new(StringComparer.Ordinal);

    public ImmutableArray<WorkNode>.Builder Nodes => nodes;

    public WorkNode Add(WorkNode node)
    {
        byId.Add(node.Id, node);
        nodes.Add(node);
        return node;
    }

    public WorkNode? Find(string id) => byId.GetValueOrDefault(id);

    public void Add(WorkLink link)
    {
        links.Add(link);
        followed.Add(link.Link.From);
    }

    /// <summary>The later node may start once the earlier one is finished.</summary>
    public void After(WorkNode earlier, WorkNode later) => Add(new WorkLink(Link.After(earlier.Id, later.Id), FilmStage.Done, null));

    public void Add(Hold hold) => holds.Add(hold);

    /// <summary>Whether nothing waits for a node yet.</summary>
    public bool IsLast(WorkNode node) => !followed.Contains(node.Id);

    public WorkNetwork Finish(ImmutableArray<Resource> resources)
    {
        var network = new Network
        {
            Activities = [.. nodes.Select(node => node.Activity)],
            Links = [.. links.Select(link => link.Link)],
            Holds = holds.ToImmutable(),
            Resources = resources,
            Horizon = Clock.Horizon,
        };
        return new WorkNetwork(network, nodes.ToImmutable(), links.ToImmutable());
    }
}
