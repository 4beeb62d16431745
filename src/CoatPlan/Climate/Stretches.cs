namespace CoatPlan.Climate;

/// <summary>The minutes at which something is permitted, answered by look-up: the next that is, the next that is not.</summary>
internal sealed class Stretches
{
    private readonly Days<StretchDay> days;

    /// <summary>The permitted minutes.</summary>
    /// <param name="surface">What is looked at: where two days of it are the same objects, so is the answer.</param>
    /// <param name="permits">From the day and the minute in it to whether it is permitted.</param>
    public Stretches(SurfaceCurve surface, Func<int, int, bool> permits) =>
        days = new Days<StretchDay>((day, before) => Next(surface, permits, day, before));

    /// <summary>The first permitted minute from one up to another; null when there is none.</summary>
    public int? NextPermitted(int from, int until) => Next(from, until, day => day.NextPermitted);

    /// <summary>The first forbidden minute from one up to another; null when there is none.</summary>
    public int? NextForbidden(int from, int until) => Next(from, until, day => day.NextForbidden);

    private int? Next(int from, int until, Func<StretchDay, short[]> side)
    {
        var (day, index) = AirCurve.Split(from);
        while (day * Days<StretchDay>.Minutes + index <= until)
        {
            var next = side(days[day])[index];
            if (next < Days<StretchDay>.Minutes)
            {
                var found = day * Days<StretchDay>.Minutes + next;
                return found <= until ? found : null;
            }

            (day, index) = (day + 1, 0);
        }

        return null;
    }

    private static StretchDay Next(SurfaceCurve surface, Func<int, int, bool> permits, int day, StretchDay? before)
    {
        var (air, metal) = (surface.Air.Day(day), surface.Day(day));
        if (before is not null && ReferenceEquals(before.Air, air) && ReferenceEquals(before.Metal, metal))
        {
            return before;
        }

        const int minutes = Days<StretchDay>.Minutes;
        var (nextPermitted, nextForbidden) = (new short[minutes], new short[minutes]);
        var (permitted, forbidden) = ((short)minutes, (short)minutes);
        for (var i = minutes - 1; i >= 0; i--)
        {
            if (permits(day, i))
            {
                permitted = (short)i;
            }
            else
            {
                forbidden = (short)i;
            }

            (nextPermitted[i], nextForbidden[i]) = (permitted, forbidden);
        }

        return new StretchDay(air, metal, nextPermitted, nextForbidden);
    }
}
