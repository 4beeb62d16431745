using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>The job as a network, with what each activity and link stands for.</summary>
/// <param name="Network">The network.</param>
/// <param name="Nodes">What its activities stand for, in its order.</param>
/// <param name="Links">What its links stand for, in its order.</param>
internal sealed record WorkNetwork(Network Network, ImmutableArray<WorkNode> Nodes, ImmutableArray<WorkLink> Links);
