using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>The air in the work place without a heater: steady, daily or by the hour; there are no other forms.</summary>
public abstract record Weather
{
    private protected Weather()
    {
    }

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
