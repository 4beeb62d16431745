namespace CoatPlan.Scheduling;

/// <summary>Whether what has already happened broke a resource's capacity, so that no rule about it can be reasoned from.</summary>
internal static class FactsClash
{
    public static bool In(Frame frame)
    {
        for (var r = 0; r < frame.Capacity.Length; r++)
        {
            var profile = new Profile();
            for (var i = 0; i < frame.Count; i++)
            {
                if (frame.Activities[i].Fixed is { } fact && Clashes(frame, profile, r, i, fact))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static bool Clashes(Frame frame, Profile profile, int resource, int activity, Placement fact)
    {
        var taken = frame.Demands[activity].Where(d => d.Resource == resource).Select(d => (d.Amount, End: fact.End))
            .Concat(frame.HoldsFrom[activity].Select(h => frame.Holds[h])
                .Where(h => h.Resource == resource && frame.Activities[h.Until].Fixed is not null)
                .Select(h => (h.Amount, End: h.GivenBackAt(frame.Activities[h.Until].Fixed!.Value.End))));
        foreach (var (amount, end) in taken)
        {
            if (profile.FreeFrom(fact.Start, end, amount, frame.Capacity[resource]) > fact.Start)
            {
                return true;
            }

            profile.Add(fact.Start, end, amount);
        }

        return false;
    }
}
