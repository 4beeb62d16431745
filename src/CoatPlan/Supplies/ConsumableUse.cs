using CoatPlan.Presets;

namespace CoatPlan.Supplies;

/// <summary>A use of something by one kind of work.</summary>
/// <param name="Consumable">What is used up.</param>
/// <param name="Count">How many, not rounded, at least 0.</param>
/// <param name="Operation">Word of the work.</param>
/// <param name="Rule">How it was counted, in words.</param>
internal sealed record ConsumableUse(Consumable Consumable, double Count, string Operation, string Rule);
