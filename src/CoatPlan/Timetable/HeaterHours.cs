using CoatPlan.Climate;

namespace CoatPlan.Timetable;

/// <summary>Hours in which an open heater is off, as sets of minutes.</summary>
internal static class HeaterHours
{
    /// <summary>Every minute that one or the other is off, in order and without overlaps.</summary>
    public static ImmutableArray<HeaterOff> Union(ImmutableArray<HeaterOff> one, ImmutableArray<HeaterOff> other)
    {
        var joined = ImmutableArray.CreateBuilder<HeaterOff>();
        foreach (var off in one.Concat(other).OrderBy(off => off.From))
        {
            if (joined.Count > 0 && joined[^1] is var last && (last.Until is null || off.From <= last.Until))
                joined[^1] = last with { Until = last.Until is { } until && off.Until is { } later ? Math.Max(until, later) : null };
            else
                joined.Add(off);
        }

        return joined.ToImmutable();
    }

    /// <summary>Whether the heater is off whenever it must be; off a little longer errs towards the colder air.</summary>
    public static bool Cover(ImmutableArray<HeaterOff> offs, ImmutableArray<HeaterOff> needed)
    {
        var known = Union(offs, []);
        return needed.All(need => known.Any(off => off.From <= need.From && (off.Until is null || need.Until <= off.Until)));
    }
}
