namespace CoatPlan.Scheduling;

/// <summary>Which activities leave and avoid the same things, so that doing them one after the other saves changing over.</summary>
internal static class Alike
{
    /// <summary>For each activity the number of its group, counted from 0; −1 for one that leaves and avoids nothing.</summary>
    public static int[] Groups(Frame frame)
    {
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        var groups = new int[frame.Count];
        for (var i = 0; i < frame.Count; i++)
        {
            var activity = frame.Activities[i];
            if (activity.Presences.IsEmpty && activity.Avoids.IsEmpty)
            {
                groups[i] = -1;
                continue;
            }

            var leaves = activity.Presences.Select(p => FormattableString.Invariant($"+{p.Kind}/{p.Key}"));
            var avoids = activity.Avoids.Select(a => FormattableString.Invariant($"-{a.Kind}/{a.ExceptKey}"));
            var signature = string.Concat(leaves.Concat(avoids).Order(StringComparer.Ordinal));
            if (!numbers.TryGetValue(signature, out groups[i]))
            {
                groups[i] = numbers.Count;
                numbers.Add(signature, numbers.Count);
            }
        }

        return groups;
    }
}
