namespace CoatPlan.Scheduling;

/// <summary>What a caller must get right before a network can be scheduled.</summary>
internal static class NetworkChecks
{
    /// <summary>The longest horizon: twenty years of minutes, so that sums of waits stay far from the limits of a whole number.</summary>
    public const int LongestHorizon = 20 * 366 * 24 * 60;

    /// <summary>Throws when a name is unknown or given twice, or a figure is outside its range.</summary>
    /// <returns>For each activity and each resource, its place in the network.</returns>
    /// <exception cref="ArgumentException">Names the value and the range.</exception>
    public static (Dictionary<string, int> Activities, Dictionary<string, int> Resources) Require(Network network)
    {
        if (network.Horizon is <= 0 or > LongestHorizon)
        {
            throw Wrong($"A horizon must lie between 1 and {LongestHorizon}, not {network.Horizon}.");
        }

        var resources = Names("resource", network.Resources.Select(r => r.Name));
        var activities = Names("activity", network.Activities.Select(a => a.Id));

        foreach (var resource in network.Resources)
        {
            NotNegative("The capacity of", resource.Name, resource.Capacity);
        }

        foreach (var activity in network.Activities)
        {
            NotNegative("The work of", activity.Id, activity.Work);
            foreach (var demand in activity.Demands)
            {
                Known("resource", resources, demand.Resource);
                NotNegative("A demand of", activity.Id, demand.Amount);
            }

            if (activity.Fixed is { } fact && fact.End < fact.Start)
            {
                throw Wrong($"The fact {activity.Id} must not end before it starts, at {fact.End} and {fact.Start}.");
            }
        }

        var askedBy = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var l = 0; l < network.Links.Length; l++)
        {
            var link = network.Links[l];
            Known("activity", activities, link.From);
            Known("activity", activities, link.To);
            if (link.Windows.IsDefaultOrEmpty)
            {
                throw Wrong($"The link from {link.From} to {link.To} must have at least one window.");
            }

            foreach (var window in link.Windows)
            {
                NotNegative("Work added by a link to", link.To, window.AddedWork);
                foreach (var id in window.Asks)
                {
                    Known("activity", activities, id);
                    if (id == link.From || id == link.To || (askedBy.TryGetValue(id, out var other) && other != l))
                    {
                        throw Wrong($"The activity {id} may be asked for by windows of one link only, and not by a link of its own.");
                    }

                    askedBy[id] = l;
                }
            }

            foreach (var id in link.Unless)
            {
                Known("activity", activities, id);
            }
        }

        foreach (var hold in network.Holds)
        {
            Known("resource", resources, hold.Resource);
            Known("activity", activities, hold.FromActivity);
            Known("activity", activities, hold.UntilActivity);
            NotNegative("A hold of", hold.Resource, hold.Amount);
        }

        return (activities, resources);
    }

    private static Dictionary<string, int> Names(string sort, IEnumerable<string> names)
    {
        var index = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            if (!index.TryAdd(name, index.Count))
            {
                throw Wrong($"Each {sort} must have its own name; {name} is given twice.");
            }
        }

        return index;
    }

    private static void Known(string sort, Dictionary<string, int> names, string name)
    {
        if (!names.ContainsKey(name))
        {
            throw Wrong($"The {sort} {name} is not one of the network's {names.Count}.");
        }
    }

    private static void NotNegative(string what, string name, int value)
    {
        if (value < 0)
        {
            throw Wrong($"{what} {name} must be 0 or more, not {value}.");
        }
    }

    private static ArgumentException Wrong(FormattableString message) => new(FormattableString.Invariant(message));
}
