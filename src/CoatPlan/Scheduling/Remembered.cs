namespace CoatPlan.Scheduling;

/// <summary>A function of a minute whose answers are kept: callers' functions may be slow, and searches ask the same again and again.</summary>
internal sealed class Remembered(Func<int, int> function)
{
    private Dictionary<int, int>? answers;

    public int At(int minute)
    {
        answers ??= [];
        if (!answers.TryGetValue(minute, out var answer))
        {
            answer = function(minute);
            answers.Add(minute, answer);
        }

        return answer;
    }

    /// <summary>The same network with all its functions remembered.</summary>
    public static Network In(Network network) => network with
    {
        Activities = [.. network.Activities.Select(In)],
        Links = [.. network.Links.Select(In)],
        Holds = [.. network.Holds.Select(h => h.Until is null ? h : h with { Until = new Remembered(h.Until).At })],
    };

    private static Activity In(Activity activity)
    {
        if (activity.NextStart is null && activity.Presences.All(p => p.Until is null))
        {
            return activity;
        }

        return activity with
        {
            NextStart = activity.NextStart is null ? null : In(activity.NextStart),
            Presences = [.. activity.Presences.Select(p => p.Until is null ? p : p with { Until = new Remembered(p.Until).At })],
        };
    }

    private static Func<int, int?> In(Func<int, int?> nextStart)
    {
        const int None = int.MaxValue;
        var remembered = new Remembered(t => nextStart(t) ?? None);
        return t => remembered.At(t) is var start && start == None ? null : start;
    }

    private static Link In(Link link) => link.Windows.All(w => w.Least.Moment is null && w.Most?.Moment is null)
        ? link
        : link with { Windows = [.. link.Windows.Select(w => w with { Least = In(w.Least), Most = w.Most is null ? null : In(w.Most) })] };

    private static Wait In(Wait wait) => wait.Moment is null ? wait
        : wait.Anchor == Anchor.Start ? Wait.FromStart(new Remembered(wait.Moment).At)
        : Wait.FromEnd(new Remembered(wait.Moment).At);
}
