namespace CoatPlan.Climate;

/// <summary>How far drying comes on one surface, summed minute by minute, so that both "how much by then" and "when" are a look-up.</summary>
internal sealed class DryingCurve
{
    /// <summary>How far ahead of the job's start drying is followed, days; what has not dried by then counts as never.</summary>
    public const int LookAheadDays = 400;

    /// <summary>Share of a wait by which rounding in the sums may miss a whole minute.</summary>
    private const double Rounding = 1e-9;

    private readonly SurfaceCurve surface;
    private readonly RateLaw law;
    private readonly Days<DryingDay> days;

    /// <summary>The drying of a surface.</summary>
    public DryingCurve(SurfaceCurve surface, RateLaw law)
    {
        this.surface = surface;
        this.law = law;
        days = new Days<DryingDay>(Next);
    }

    /// <summary>The first minute at which so much has been done since another; null when that is never.</summary>
    /// <param name="from">The minute from which it counts; before the job's start the pace is that of the start.</param>
    /// <param name="need">Minutes at the reference pace, 0 or more (or the share of a table's time).</param>
    public int? Reaches(int from, double need)
    {
        if (need <= 0)
        {
            return from;
        }

        var goal = Sum(from) + need * (1 - Rounding);
        if (from < 0 && goal <= 0)
        {
            return from + (int)Math.Ceiling(need * (1 - Rounding) / days[0].FirstRate);
        }

        for (var day = AirCurve.Split(from).Day; day < LookAheadDays; day++)
        {
            var last = days[day];
            if (last.Before + last.Sums[^1] >= goal)
            {
                return day * Days<DryingDay>.Minutes + FirstAtLeast(last, goal);
            }
        }

        return null;
    }

    /// <summary>The last minute at which no more than so much has been done since another.</summary>
    /// <param name="from">The minute from which it counts; before the job's start the pace is that of the start.</param>
    /// <param name="allowance">Minutes at the reference pace, 0 or more.</param>
    public int? Outlasts(int from, double allowance)
    {
        var goal = Sum(from) + allowance * (1 + Rounding);
        if (from < 0 && goal < 0)
        {
            return from + (int)Math.Floor(allowance * (1 + Rounding) / days[0].FirstRate);
        }

        for (var day = AirCurve.Split(from).Day; day < LookAheadDays; day++)
        {
            var last = days[day];
            if (last.Before + last.Sums[^1] > goal)
            {
                return day * Days<DryingDay>.Minutes + FirstAbove(last, goal) - 1;
            }
        }

        return null;
    }

    private double Sum(int minute)
    {
        if (minute < 0)
        {
            return minute * days[0].FirstRate;
        }

        var (day, index) = AirCurve.Split(minute);
        return days[day].Before + days[day].Sums[index];
    }

    private static int FirstAtLeast(DryingDay day, double goal)
    {
        var (low, high) = (0, day.Sums.Length - 1);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = day.Before + day.Sums[middle] >= goal ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    private static int FirstAbove(DryingDay day, double goal)
    {
        var (low, high) = (0, day.Sums.Length - 1);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = day.Before + day.Sums[middle] > goal ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    private DryingDay Next(int day, DryingDay? before)
    {
        var air = surface.Air.Day(day);
        var metal = surface.Day(day);
        var done = before is null ? 0 : before.Before + before.Sums[^1];
        if (before is not null && ReferenceEquals(before.Air, air) && ReferenceEquals(before.Metal, metal))
        {
            return before with { Before = done };
        }

        var sums = new double[metal.Length];
        var first = law.At(metal[0], air.Celsius[0], air.Relative[0]);
        var rate = first;
        for (var i = 1; i < sums.Length; i++)
        {
            var next = law.At(metal[i], air.Celsius[i], air.Relative[i]);
            sums[i] = sums[i - 1] + (rate + next) / 2;
            rate = next;
        }

        return new DryingDay(air, metal, done, sums, first);
    }
}
