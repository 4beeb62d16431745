namespace CoatPlan.Scheduling;

/// <summary>A demand by index.</summary>
internal readonly record struct FrameDemand(int Resource, int Amount)
{
    /// <summary>What an activity demands of each resource, those of which it demands nothing left out.</summary>
    /// <param name="activity">The activity.</param>
    /// <param name="names">The names of its network.</param>
    public static FrameDemand[] Of(Activity activity, NetworkNames names)
    {
        var demands = new List<FrameDemand>(activity.Demands.Length);
        foreach (var demand in activity.Demands)
        {
            var resource = names.Resource(demand.Resource);
            var at = demands.FindIndex(d => d.Resource == resource);
            if (at >= 0)
            {
                demands[at] = new FrameDemand(resource, demands[at].Amount + demand.Amount);
            }
            else if (demand.Amount > 0)
            {
                demands.Add(new FrameDemand(resource, demand.Amount));
            }
        }

        return [.. demands];
    }
}
