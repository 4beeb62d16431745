namespace CoatPlan.Scheduling;

/// <summary>The openings in which work may go on, in order and apart from each other.</summary>
/// <remarks>Saturday 9:00–12:00 and 13:00–17:00 are two openings: work that may be broken pauses for lunch, other work of two hours never starts at 11:00.</remarks>
public sealed class OpenHours
{
    private readonly ImmutableArray<Opening> openings;
    private readonly int[] openBefore;

    private OpenHours(ImmutableArray<Opening> openings)
    {
        this.openings = openings;
        openBefore = new int[openings.Length + 1];
        for (var i = 0; i < openings.Length; i++)
        {
            openBefore[i + 1] = openBefore[i] + openings[i].Closes - openings[i].Opens;
        }
    }

    /// <summary>The openings, sorted and disjoint; openings that touched were joined.</summary>
    public ImmutableArray<Opening> Openings => openings;

    /// <summary>Hours made of openings in any order.</summary>
    /// <param name="openings">The openings; those that overlap or touch are joined.</param>
    /// <exception cref="ArgumentException">An opening closes at or before the minute at which it opens.</exception>
    public static OpenHours Of(params IEnumerable<Opening> openings)
    {
        var joined = ImmutableArray.CreateBuilder<Opening>();
        foreach (var next in openings.OrderBy(o => o.Opens))
        {
            if (next.Closes <= next.Opens)
            {
                throw new ArgumentException(
                    FormattableString.Invariant($"An opening must close after it opens, not run from {next.Opens} to {next.Closes}."), nameof(openings));
            }

            if (joined.Count > 0 && next.Opens <= joined[^1].Closes)
            {
                joined[^1] = joined[^1] with { Closes = Math.Max(joined[^1].Closes, next.Closes) };
            }
            else
            {
                joined.Add(next);
            }
        }

        return new OpenHours(joined.ToImmutable());
    }

    /// <summary>The first start at or after a minute from which work can be done, and the end it leads to; null when there is none.</summary>
    /// <param name="from">The earliest start.</param>
    /// <param name="work">Minutes of work, 1 or more.</param>
    /// <param name="breakable">Whether the work may run on in later openings.</param>
    public Placement? NextFit(int from, int work, bool breakable)
    {
        var i = IndexAt(from);
        if (breakable)
        {
            return i < openings.Length && EndOf(i, Math.Max(from, openings[i].Opens), work) is { } end
                ? new Placement(Math.Max(from, openings[i].Opens), end)
                : null;
        }

        for (; i < openings.Length; i++)
        {
            var start = Math.Max(from, openings[i].Opens);
            if (openings[i].Closes - start >= work)
            {
                return new Placement(start, start + work);
            }
        }

        return null;
    }

    /// <summary>How many open minutes there are in a stretch of time.</summary>
    /// <param name="from">Its first minute.</param>
    /// <param name="until">The minute after its last one.</param>
    public int OpenMinutes(int from, int until) => until <= from ? 0 : OpenBefore(until) - OpenBefore(from);

    private int OpenBefore(int minute)
    {
        var i = IndexAt(minute);
        return i == openings.Length ? openBefore[i] : openBefore[i] + Math.Max(0, minute - openings[i].Opens);
    }

    /// <summary>The index of the first opening that closes after a minute; the number of openings where none does.</summary>
    /// <param name="minute">The minute.</param>
    public int IndexAt(int minute)
    {
        var low = 0;
        var high = openings.Length;
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            if (openings[middle].Closes > minute)
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        return low;
    }

    private int? EndOf(int i, int start, int work)
    {
        if (openings[i].Closes - start >= work)
        {
            return start + work;
        }

        var target = openBefore[i] + start - openings[i].Opens + work;
        if (target > openBefore[^1])
        {
            return null;
        }

        // The opening in which the last minute is worked: the first whose total reaches the target.
        var at = Array.BinarySearch(openBefore, target);
        var k = (at >= 0 ? at : ~at) - 1;
        return openings[k].Opens + target - openBefore[k];
    }
}
