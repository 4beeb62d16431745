namespace CoatPlan.Vapour;

/// <summary>How long a room takes to clear.</summary>
public static class PurgeTime
{
    /// <summary>
    /// Time for a concentration to fall in a room without a further source: t = K · V / Q · ln(C1/C2). Source: MMWR 43 RR-13 (1994) Table S3-1 for K = 1.
    /// </summary>
    /// <param name="room">The room; without removal nothing ever clears.</param>
    /// <param name="from">Where it begins, more than zero, in any unit.</param>
    /// <param name="to">Where it should end, more than zero, in the same unit.</param>
    /// <returns>Zero where it is there already; null where nothing leaves the room.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A concentration that is not more than zero.</exception>
    public static Duration? Of(WorkRoom room, double from, double to)
    {
        ArgumentNullException.ThrowIfNull(room);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(from);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(to);

        if (from <= to)
            return Duration.Zero;
        return room.RatePerMinute > 0 ? Duration.FromMinutes(Math.Log(from / to) / room.RatePerMinute) : null;
    }
}
