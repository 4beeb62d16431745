namespace CoatPlan.Scheduling;

/// <summary>What keeps an activity from starting a minute earlier.</summary>
/// <param name="Kind">Which sort of rule binds.</param>
public sealed record Reason(ReasonKind Kind)
{
    /// <summary>The index in the network of the link that binds; null where none does.</summary>
    public int? Link { get; init; }

    /// <summary>The index in that link of the window in use; null where no link binds.</summary>
    public int? Window { get; init; }

    /// <summary>The name of the resource that is in use; null where none is.</summary>
    public string? Resource { get; init; }

    /// <summary>The id of the activity on the other side: it holds the resource, is waited for, or leaves what must be avoided; null where there is none.</summary>
    public string? Other { get; init; }
}
