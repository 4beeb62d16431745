namespace CoatPlan;

/// <summary>One moment at which a job could start, or go on where it has begun.</summary>
/// <param name="Start">Local wall time.</param>
/// <param name="Finish">End of the last step.</param>
/// <param name="Meets">Whether that is no later than the job's <c>finish-by</c>; true where none was asked.</param>
/// <param name="LeastMarginC">The least distance, in kelvin, of the metal above the lowest that the labels' distances from the dew point allow, while any film is wet; null without a coat to come.</param>
/// <param name="WaitH">Hours of working time, from the start to the finish, in which no step runs.</param>
public sealed record StartTime(LocalDateTime Start, LocalDateTime Finish, bool Meets, double? LeastMarginC, double WaitH)
{
    /// <summary>Whether another start is no worse in anything and better in something: later, and yet finished no later, with no more waiting and no less margin.</summary>
    /// <param name="other">Another start of the same job.</param>
    public bool IsDominatedBy(StartTime other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var isNoWorse = other.Start >= Start && other.Finish <= Finish && other.WaitH <= WaitH && Margin(other) >= Margin(this);
        return isNoWorse && (other.Start > Start || other.Finish < Finish || other.WaitH < WaitH || Margin(other) > Margin(this));
    }

    private static double Margin(StartTime time) => time.LeastMarginC ?? double.PositiveInfinity;
}
