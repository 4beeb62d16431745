namespace CoatPlan.Jobs;

/// <summary>What kind of value stands at a place of a job file.</summary>
public enum OutlineKind
{
    /// <summary>A single value, typed.</summary>
    Value,

    /// <summary>One of some words.</summary>
    Word,

    /// <summary>Some of some words.</summary>
    Words,

    /// <summary>One or more values, typed.</summary>
    Values,

    /// <summary>Values by key: what is in it has an outline of its own.</summary>
    Map,

    /// <summary>A list: what is in it has an outline of its own.</summary>
    List,
}
