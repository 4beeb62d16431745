namespace CoatPlan.Scheduling;

/// <summary>What a schedule is generated from.</summary>
/// <param name="Ranks">For each activity its place in the order in which they are taken.</param>
/// <param name="Windows">For each link the window that is tried first; −1 for whichever starts earliest.</param>
internal readonly record struct Candidate(int[] Ranks, int[] Windows);
