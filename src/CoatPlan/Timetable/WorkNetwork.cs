using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>The job as a network, with what each activity and link stands for.</summary>
/// <param name="Network">The network.</param>
/// <param name="Nodes">What its activities stand for, in its order.</param>
/// <param name="Links">What its links stand for, in its order.</param>
internal sealed record WorkNetwork(Network Network, ImmutableArray<WorkNode> Nodes, ImmutableArray<WorkLink> Links)
{
    /// <summary>The network without what a schedule of it does not do, and that schedule.</summary>
    public (WorkNetwork Drawn, Schedule Schedule) SettledOn(Schedule schedule)
    {
        var settled = Settling.Of(Network, schedule);
        ImmutableArray<WorkLink> links = [.. settled.Links.Select((l, at) => Links[l].Settled(settled.Network.Links[at], schedule.WindowInUse[l]))];
        return (
            new WorkNetwork(
                settled.Network with { Links = [.. links.Select(link => link.Link)] }, [.. settled.Activities.Select(i => Nodes[i])], links),
            settled.Schedule);
    }
}
