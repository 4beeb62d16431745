namespace CoatPlan.Scheduling;

/// <summary>What makes one schedule better than another: an earlier finish, then the caller's preference, then earlier ends in sum.</summary>
internal readonly record struct Worth(int Finish, long Preference, long Ends) : IComparable<Worth>
{
    public static Worth Of(Schedule schedule, Func<Schedule, long>? preference)
    {
        var ends = 0L;
        foreach (var placement in schedule.Placements)
        {
            ends += placement.End;
        }

        return new Worth(schedule.Finish, preference?.Invoke(schedule) ?? 0, ends);
    }

    public int CompareTo(Worth other) => (Finish, Preference, Ends).CompareTo((other.Finish, other.Preference, other.Ends));
}
