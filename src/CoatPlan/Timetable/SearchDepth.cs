namespace CoatPlan.Timetable;

/// <summary>How far the search for an earlier finish goes; either way the same job gives the same plan.</summary>
public enum SearchDepth
{
    /// <summary>A few orders: a plan that keeps every rule at once, for showing while somebody types.</summary>
    Quick,

    /// <summary>Hundreds of orders and an exact search of small jobs: the plan that is printed.</summary>
    Full,
}
