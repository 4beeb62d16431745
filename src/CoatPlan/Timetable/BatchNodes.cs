namespace CoatPlan.Timetable;

/// <summary>The nodes of one batch in a network.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Before">Work before its coats.</param>
/// <param name="Coats">Its coats, first to last.</param>
/// <param name="Operations">All its work but coats and what the gaps between them ask.</param>
internal sealed record BatchNodes(
    Batch Batch, ImmutableArray<WorkNode> Before, ImmutableArray<WorkNode> Coats, ImmutableArray<WorkNode> Operations);
