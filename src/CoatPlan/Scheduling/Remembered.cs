using System.Diagnostics.CodeAnalysis;

namespace CoatPlan.Scheduling;

/// <summary>
/// A function of a minute whose answers are kept: callers' functions may be slow, and searches ask the same again and again. Whoever uses one function
/// for many waits wraps it once, so that all of them share its answers.
/// </summary>
internal sealed class Remembered
{
    private const int PageBits = 7;
    private const int PageSize = 1 << PageBits;

    // A week and a half at once: most jobs look no further.
    private const int LeastPages = 120;

    // Minutes past this are rare and asked anew.
    private const int MostPages = 1 << 11;

    private static readonly Lock Growing = new();

    private readonly Func<int, int> function;
    private volatile int[]?[] pages = [];

    public Remembered(Func<int, int> function)
    {
        this.function = function;
    }

    /// <summary>The function with its answers kept, its own where they are kept already; null for none.</summary>
    [return: NotNullIfNotNull(nameof(function))]
    public static Remembered? Of(Func<int, int>? function) => function is null ? null : function.Target as Remembered ?? new Remembered(function);

    /// <summary>The function's answer.</summary>
    public int At(int minute)
    {
        var page = minute >> PageBits;
        if ((uint)page >= MostPages)
        {
            return function(minute);
        }

        var kept = pages;
        if (page >= kept.Length)
        {
            kept = Grown(page);
        }

        // Answers are kept one higher, so that 0 means none yet. Two threads that ask at once both work it out.
        var answers = kept[page] ??= new int[PageSize];
        var known = answers[minute & (PageSize - 1)];
        if (known != 0)
        {
            return known - 1;
        }

        var answer = function(minute);
        answers[minute & (PageSize - 1)] = answer + 1;
        return answer;
    }

    // One at a time: of two that grow it at once the smaller would be left for both.
    private int[]?[] Grown(int page)
    {
        lock (Growing)
        {
            var grown = pages;
            if (page >= grown.Length)
            {
                Array.Resize(ref grown, Math.Max(page + 1, Math.Min(MostPages, Math.Max(LeastPages, grown.Length * 2))));
                pages = grown;
            }

            return grown;
        }
    }

    /// <summary>The same network with all its functions remembered.</summary>
    public static Network In(Network network) => network with
    {
        Activities = [.. network.Activities.Select(In)],
        Links = [.. network.Links.Select(In)],
        Holds = [.. network.Holds.Select(h => h.Until is null || IsRemembered(h.Until) ? h : h with { Until = new Remembered(h.Until).At })],
    };

    private static bool IsRemembered(Delegate function) => function.Target is Remembered or RememberedStarts;

    private static Activity In(Activity activity)
    {
        var start = activity.NextStart is null || IsRemembered(activity.NextStart);
        if (start && activity.Presences.All(p => p.Until is null || IsRemembered(p.Until)))
        {
            return activity;
        }

        return activity with
        {
            NextStart = start ? activity.NextStart : new RememberedStarts(activity.NextStart!).From,
            Presences = [.. activity.Presences.Select(p => p.Until is null || IsRemembered(p.Until) ? p : p with { Until = new Remembered(p.Until).At })],
        };
    }

    private static Link In(Link link) => link.Windows.All(w => IsRemembered(w.Least) && (w.Most is null || IsRemembered(w.Most)))
        ? link
        : link with { Windows = [.. link.Windows.Select(w => w with { Least = In(w.Least), Most = w.Most is null ? null : In(w.Most) })] };

    private static bool IsRemembered(Wait wait) => wait.Moment is null || IsRemembered(wait.Moment);

    private static Wait In(Wait wait) => IsRemembered(wait) ? wait
        : wait.Anchor == Anchor.Start ? Wait.FromStart(new Remembered(wait.Moment!).At)
        : Wait.FromEnd(new Remembered(wait.Moment!).At);
}
