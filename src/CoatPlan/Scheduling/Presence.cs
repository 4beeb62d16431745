namespace CoatPlan.Scheduling;

/// <summary>What an activity leaves in a shared space from its start until some time after its end, and others may have to avoid.</summary>
/// <param name="Kind">Which sort of thing is there; any number the caller chooses.</param>
/// <param name="Key">Which one of that sort; an <see cref="Avoidance"/> may except one key.</param>
/// <param name="Until">From the activity's end to the minute at which it is gone, never earlier and never decreasing; null means at the end.</param>
public sealed record Presence(int Kind, int Key = 0, Func<int, int>? Until = null);
