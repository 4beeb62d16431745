namespace CoatPlan.Climate;

/// <summary>What holds on each day of 1440 minutes from the job's start, computed in order when first asked for and kept.</summary>
/// <remarks>
/// A day like the one before may be the same object: in steady or daily weather everything settles within a few days,
/// and sixty days cost no more than those.
/// </remarks>
/// <typeparam name="T">What is known of a day; never changed once it is here.</typeparam>
internal sealed class Days<T>
    where T : class
{
    /// <summary>Minutes in a day.</summary>
    public const int Minutes = 1440;

    private readonly Func<int, T?, T> next;
    private readonly Lock growing = new();
    private volatile T[] known = [];
    private int count;

    /// <summary>Days that follow from each other.</summary>
    /// <param name="next">From the day's number, counted from 0, and the day before it, null for the first, to the day.</param>
    public Days(Func<int, T?, T> next) => this.next = next;

    /// <summary>One day.</summary>
    /// <param name="day">The day's number, 0 or more.</param>
    public T this[int day]
    {
        get
        {
            var snapshot = known;
            return day < snapshot.Length && snapshot[day] is { } ready ? ready : Grow(day);
        }
    }

    private T Grow(int day)
    {
        lock (growing)
        {
            var days = known;
            while (count <= day)
            {
                if (count == days.Length)
                {
                    Array.Resize(ref days, Math.Max(8, 2 * count));
                    known = days;
                }

                days[count] = next(count, count == 0 ? null : days[count - 1]);
                count++;
            }

            return days[day];
        }
    }
}
