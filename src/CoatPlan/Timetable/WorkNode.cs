using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>An activity of the network with what it stands for in the job; one that stands for nothing is a milestone and never becomes a step.</summary>
internal sealed record WorkNode
{
    /// <summary>The activity as the scheduling room sees it.</summary>
    public required Activity Activity { get; init; }

    /// <summary>The operation that it is; null for a coat or a milestone.</summary>
    public Prep.Operation? Operation { get; init; }

    /// <summary>The coat that it is; null for an operation or a milestone.</summary>
    public CoatTask? Coat { get; init; }

    /// <summary>The batch it belongs to; null for work on the whole job.</summary>
    public Batch? Batch { get; init; }

    /// <summary>The station it is done at; null where the job has one crew.</summary>
    public int? Station { get; init; }

    /// <summary>Its id, the step's id too.</summary>
    public string Id => Activity.Id;

    /// <summary>Whether it is nobody's work, only a point that others wait for.</summary>
    public bool IsMilestone => Operation is null && Coat is null;
}
