namespace CoatPlan.Scheduling;

/// <summary>How much of each resource is taken over time.</summary>
/// <param name="capacity">How much there is of each.</param>
internal sealed class ResourceProfiles(int[] capacity)
{
    private readonly Profile[] use = [.. capacity.Select(_ => new Profile())];

    /// <summary>Nothing is taken.</summary>
    public void Clear()
    {
        foreach (var profile in use)
        {
            profile.Clear();
        }
    }

    /// <summary>The start itself when there is enough for all demands of a placement; otherwise a minute before which no later start has it, <see cref="Profile.Never"/> where that is never.</summary>
    public int FreeFrom(FrameDemand[] demands, Placement at)
    {
        var free = at.Start;
        foreach (var demand in demands)
        {
            free = Math.Max(free, FreeFrom(demand.Resource, at.Start, at.End, demand.Amount));
        }

        return free;
    }

    /// <summary>The minute itself when there is enough of a resource up to another; otherwise as above.</summary>
    public int FreeFrom(int resource, int from, int until, int amount) => use[resource].FreeFrom(from, until, amount, capacity[resource]);

    /// <summary>Takes what is demanded while a placement lasts; with sign −1, gives it back.</summary>
    public void Add(FrameDemand[] demands, Placement at, int sign)
    {
        foreach (var demand in demands)
        {
            use[demand.Resource].Add(at.Start, at.End, sign * demand.Amount);
        }
    }

    /// <summary>Takes an amount of a resource from a minute up to another; gives it back where the amount is less than 0.</summary>
    public void Add(int resource, int from, int until, int amount) => use[resource].Add(from, until, amount);
}
