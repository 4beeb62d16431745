namespace CoatPlan.Scheduling;

/// <summary>What is present over time, and who must not meet it, for the activities placed so far.</summary>
internal sealed class SharedSpace
{
    private readonly (int Kind, int Key, Presence Presence)[][] leaves;
    private readonly (int Kind, int? ExceptKey)[][] avoids;
    private readonly Timeline[] present;
    private readonly Timeline[] avoiding;

    public SharedSpace(Frame frame)
    {
        leaves = new (int, int, Presence)[frame.Count][];
        avoids = new (int, int?)[frame.Count][];
        for (var i = 0; i < frame.Count; i++)
        {
            leaves[i] = frame.Activities[i].Presences is { IsEmpty: false } presences ? [.. presences.Select(p => (frame.Kinds[p.Kind], p.Key, p))] : [];
            avoids[i] = frame.Activities[i].Avoids is { IsEmpty: false } avoidances ? [.. avoidances.Select(v => (frame.Kinds[v.Kind], v.ExceptKey))] : [];
        }

        present = [.. Enumerable.Range(0, frame.Kinds.Count).Select(_ => new Timeline())];
        avoiding = [.. Enumerable.Range(0, frame.Kinds.Count).Select(_ => new Timeline())];
    }

    public void Clear()
    {
        foreach (var timeline in present)
        {
            timeline.Clear();
        }

        foreach (var timeline in avoiding)
        {
            timeline.Clear();
        }
    }

    public void Add(int activity, Placement at)
    {
        foreach (var (kind, key, presence) in leaves[activity])
        {
            present[kind].Add(at.Start, Frame.GoneAt(presence, at.End), activity, key);
        }

        foreach (var (kind, exceptKey) in avoids[activity])
        {
            avoiding[kind].Add(at.Start, at.End, activity, exceptKey);
        }
    }

    public void Remove(int activity, Placement at)
    {
        foreach (var (kind, key, presence) in leaves[activity])
        {
            present[kind].Remove(at.Start, Frame.GoneAt(presence, at.End), activity, key);
        }

        foreach (var (kind, exceptKey) in avoids[activity])
        {
            avoiding[kind].Remove(at.Start, at.End, activity, exceptKey);
        }
    }

    /// <summary>The start itself when nothing is in the way of a placement; otherwise a minute before which no later start is clear.</summary>
    public int ClearFrom(int activity, Placement at)
    {
        var clear = at.Start;
        foreach (var (kind, exceptKey) in avoids[activity])
        {
            clear = Math.Max(clear, present[kind].ClearFrom(at.Start, at.End, activity, exceptKey));
        }

        foreach (var (kind, key, presence) in leaves[activity])
        {
            var gone = Frame.GoneAt(presence, at.End);
            clear = Math.Max(clear, avoiding[kind].ClearFrom(at.Start, gone, activity, key));
        }

        return clear;
    }
}
