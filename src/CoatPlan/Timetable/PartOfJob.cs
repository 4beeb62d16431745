using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>The part of a job that can be placed where the whole cannot: whatever does not wait for the step that found no time.</summary>
internal static class PartOfJob
{
    // Each round takes at least one step out; a job that needs more of them has little left to show.
    private const int MostRounds = 40;

    /// <summary>The part, with why it is not the whole.</summary>
    public static Arranged Of(ImmutableArray<Batch> batches, WorkNetwork whole, Outcome failed)
    {
        var stop = new Stop(whole, failed.Blockage);
        var (part, outcome) = (whole, failed);
        for (var round = 0; round < MostRounds && outcome.Schedule is null && outcome.Blockage is { } blockage && part.Nodes.Length > 0; round++)
        {
            part = Without(part, WaitingFor(part, Culprit(part, blockage)));
            outcome = Scheduler.Schedule(part.Network, Effort.Draft);
        }

        return outcome.Schedule is null ? new Arranged(batches, part, outcome, stop) : Arranged.On(batches, part, outcome, stop);
    }

    // A closing step finds no time because of what it waits for: the coat or wipe of the batch whose window closes stands at the head of the chain.
    private static string Culprit(WorkNetwork network, Blockage blockage)
    {
        var node = network.Find(blockage.Activity);
        if (node?.Batch is not null || node is null)
            return blockage.Activity;

        var lastCoat = network.Nodes.LastOrDefault(other => other.Coat is not null && other.Activity.Fixed is null);
        return lastCoat?.Id ?? blockage.Activity;
    }

    // A piece whose last coat finds no time hangs where it is: its place on the rack is not given back.
    private static Hold Kept(Hold hold, HashSet<string> gone) =>
        gone.Contains(hold.UntilActivity) ? hold with { UntilActivity = hold.FromActivity, Until = _ => Clock.Horizon } : hold;

    private static HashSet<string> WaitingFor(WorkNetwork network, string culprit)
    {
        var followers = network.Links.ToLookup(link => link.Link.From, link => link.Link.To, StringComparer.Ordinal);
        var waiting = new HashSet<string>(StringComparer.Ordinal) { culprit };
        var open = new Queue<string>([culprit]);
        while (open.TryDequeue(out var id))
        {
            foreach (var follower in followers[id])
            {
                if (waiting.Add(follower))
                    open.Enqueue(follower);
            }
        }

        return waiting;
    }

    private static WorkLink WithoutUnless(WorkLink link, HashSet<string> gone) =>
        link.Link.Unless.Any(gone.Contains) ? link with { Link = link.Link with { Unless = [.. link.Link.Unless.Where(id => !gone.Contains(id))] } } : link;

    // What only a window of a coat that is gone asks for goes with it.
    private static void AddWhatTheyAskFor(WorkNetwork network, HashSet<string> gone)
    {
        foreach (var link in network.Links.Where(link => gone.Contains(link.Link.To)))
            gone.UnionWith(link.Link.Windows.SelectMany(window => window.Asks));
    }

    private static WorkNetwork Without(WorkNetwork network, HashSet<string> gone)
    {
        AddWhatTheyAskFor(network, gone);
        ImmutableArray<WorkNode> nodes = [.. network.Nodes.Where(node => !gone.Contains(node.Id))];
        ImmutableArray<WorkLink> links = [.. network.Links.Where(link => !gone.Contains(link.Link.From) && !gone.Contains(link.Link.To)).Select(link => WithoutUnless(link, gone))];
        return new WorkNetwork(
            network.Network with
            {
                Activities = [.. nodes.Select(node => node.Activity)],
                Links = [.. links.Select(link => link.Link)],
                Holds = [.. network.Network.Holds.Where(hold => !gone.Contains(hold.FromActivity)).Select(hold => Kept(hold, gone))],
            },
            nodes,
            links);
    }
}
