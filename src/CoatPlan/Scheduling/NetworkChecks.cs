namespace CoatPlan.Scheduling;

/// <summary>What a caller must get right before a network can be scheduled, besides its names; see <see cref="NetworkNames"/>.</summary>
internal static class NetworkChecks
{
    /// <summary>The longest horizon: twenty years of minutes, so that sums of waits stay far from the limits of a whole number.</summary>
    public const int LongestHorizon = 20 * 366 * 24 * 60;

    /// <summary>Throws when a figure is outside its range, or an activity is asked for where it may not be.</summary>
    /// <exception cref="ArgumentException">Names the value and the range.</exception>
    public static void Require(Network network)
    {
        if (network.Horizon is <= 0 or > LongestHorizon)
        {
            throw Wrong($"A horizon must lie between 1 and {LongestHorizon}, not {network.Horizon}.");
        }

        foreach (var resource in network.Resources)
        {
            NotNegative("The capacity of", resource.Name, resource.Capacity);
        }

        foreach (var activity in network.Activities)
        {
            NotNegative("The work of", activity.Id, activity.Work);
            foreach (var demand in activity.Demands)
            {
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
            if (link.Windows.IsDefaultOrEmpty)
            {
                throw Wrong($"The link from {link.From} to {link.To} must have at least one window.");
            }

            foreach (var window in link.Windows)
            {
                NotNegative("Work added by a link to", link.To, window.AddedWork);
                foreach (var id in window.Asks)
                {
                    if (id == link.From || id == link.To || (askedBy.TryGetValue(id, out var other) && other != l))
                    {
                        throw Wrong($"The activity {id} may be asked for by windows of one link only, and not by a link of its own.");
                    }

                    askedBy[id] = l;
                }
            }
        }

        foreach (var hold in network.Holds)
        {
            NotNegative("A hold of", hold.Resource, hold.Amount);
        }
    }

    /// <summary>What is thrown of a network that was drawn up wrongly.</summary>
    public static ArgumentException Wrong(FormattableString message) => new(FormattableString.Invariant(message));

    private static void NotNegative(string what, string name, int value)
    {
        if (value < 0)
        {
            throw Wrong($"{what} {name} must be 0 or more, not {value}.");
        }
    }
}
