namespace CoatPlan.Scheduling;

/// <summary>A link by index, with its waits at each pace.</summary>
internal sealed class RepairLink
{
    public required int From { get; init; }

    public required int To { get; init; }

    /// <summary>By pace, then by window.</summary>
    public required RepairWait[][] Least { get; init; }

    /// <summary>By pace, then by window; null where it never closes.</summary>
    public required RepairWait?[][] Most { get; init; }

    public required int[] AddedWork { get; init; }

    /// <summary>By window, the activities that it asks for, in the network's order.</summary>
    public required int[][] Asks { get; init; }

    /// <summary>All activities that some window asks for.</summary>
    public required int[] Asked { get; init; }

    public required int[] Unless { get; init; }

    /// <summary>The window that the plan uses.</summary>
    public required int Planned { get; init; }

    /// <summary>Whether the plan does what makes it say nothing.</summary>
    public required bool IsSilent { get; init; }

    public int Windows => AddedWork.Length;

    public bool Closes { get; init; }
}
