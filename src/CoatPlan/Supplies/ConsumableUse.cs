using CoatPlan.Presets;

namespace CoatPlan.Supplies;

/// <summary>A use of something by one kind of work.</summary>
/// <param name="Consumable">What is used up.</param>
/// <param name="Count">How many, not rounded, at least 0.</param>
/// <param name="For">The work and its measure, in words.</param>
internal sealed record ConsumableUse(Consumable Consumable, double Count, string For);
