using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>One stage of a heat cure.</summary>
/// <param name="At">Temperature of the part.</param>
/// <param name="For">How long it is held.</param>
public readonly record struct CureStage(Temperature At, Duration For);
