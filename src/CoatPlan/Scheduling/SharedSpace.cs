namespace CoatPlan.Scheduling;

/// <summary>What is present over time, and who must not meet it, for the activities placed so far.</summary>
internal sealed class SharedSpace
{
    private readonly Frame frame;
    private readonly Timeline[] present;
    private readonly Timeline[] avoiding;

    public SharedSpace(Frame frame)
    {
        this.frame = frame;
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
        foreach (var presence in frame.Activities[activity].Presences)
        {
            present[frame.Kinds[presence.Kind]].Add(at.Start, Frame.GoneAt(presence, at.End), activity, presence.Key);
        }

        foreach (var avoidance in frame.Activities[activity].Avoids)
        {
            avoiding[frame.Kinds[avoidance.Kind]].Add(at.Start, at.End, activity, avoidance.ExceptKey);
        }
    }

    public void Remove(int activity, Placement at)
    {
        foreach (var presence in frame.Activities[activity].Presences)
        {
            present[frame.Kinds[presence.Kind]].Remove(at.Start, Frame.GoneAt(presence, at.End), activity, presence.Key);
        }

        foreach (var avoidance in frame.Activities[activity].Avoids)
        {
            avoiding[frame.Kinds[avoidance.Kind]].Remove(at.Start, at.End, activity, avoidance.ExceptKey);
        }
    }

    /// <summary>The start itself when nothing is in the way of a placement; otherwise a minute before which no later start is clear.</summary>
    public int ClearFrom(int activity, Placement at)
    {
        var clear = at.Start;
        foreach (var avoidance in frame.Activities[activity].Avoids)
        {
            clear = Math.Max(clear, present[frame.Kinds[avoidance.Kind]].ClearFrom(at.Start, at.End, activity, avoidance.ExceptKey));
        }

        foreach (var presence in frame.Activities[activity].Presences)
        {
            var gone = Frame.GoneAt(presence, at.End);
            clear = Math.Max(clear, avoiding[frame.Kinds[presence.Kind]].ClearFrom(at.Start, gone, activity, presence.Key));
        }

        return clear;
    }
}
