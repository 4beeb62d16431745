namespace CoatPlan.Climate;

/// <summary>Whether something is permitted at a minute, asked minute by minute and kept: for answers too dear to be had for whole days.</summary>
internal sealed class MinuteMemo
{
    private const byte Permitted = 1;
    private const byte Forbidden = 2;

    private readonly Days<MinuteMemoDay> days;
    private readonly Func<int, int, bool> permits;

    /// <summary>The permitted minutes.</summary>
    /// <param name="surface">What is looked at: where two days of it are the same objects, so is the answer.</param>
    /// <param name="permits">From the day and the minute in it to whether it is permitted.</param>
    public MinuteMemo(SurfaceCurve surface, Func<int, int, bool> permits)
    {
        this.permits = permits;
        days = new Days<MinuteMemoDay>((day, before) => Next(surface, day, before));
    }

    /// <summary>The first permitted minute from one up to another; null when there is none.</summary>
    public int? NextPermitted(int from, int until) => Next(from, until, Permitted);

    /// <summary>The first forbidden minute from one up to another; null when there is none.</summary>
    public int? NextForbidden(int from, int until) => Next(from, until, Forbidden);

    private int? Next(int from, int until, byte sought)
    {
        MinuteMemoDay? without = null;
        var minute = from;
        while (minute <= until)
        {
            var (day, index) = AirCurve.Split(minute);
            var here = days[day];
            var rest = Days<MinuteMemoDay>.Minutes - index;
            // A day that was gone through without a find has none when it comes again.
            if (!ReferenceEquals(here, without))
            {
                var last = Math.Min(rest - 1, until - minute);
                for (var after = 0; after <= last; after++)
                {
                    if (Answer(here, day, index + after) == sought)
                    {
                        return minute + after;
                    }
                }

                without = index == 0 ? here : without;
            }

            minute += rest;
        }

        return null;
    }

    private byte Answer(MinuteMemoDay of, int day, int index)
    {
        if (of.Answers[index] == 0)
        {
            of.Answers[index] = permits(day, index) ? Permitted : Forbidden;
        }

        return of.Answers[index];
    }

    private static MinuteMemoDay Next(SurfaceCurve surface, int day, MinuteMemoDay? before)
    {
        var (air, metal) = (surface.Air.Day(day), surface.Day(day));
        return before is not null && ReferenceEquals(before.Air, air) && ReferenceEquals(before.Metal, metal)
            ? before
            : new MinuteMemoDay(air, metal, new byte[Days<MinuteMemoDay>.Minutes]);
    }
}
