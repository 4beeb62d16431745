using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>Something used up by an operation that is not paint.</summary>
/// <param name="Word">Key of the row, such as <c>sheet-p320</c>.</param>
/// <param name="Title">What to ask for at the counter.</param>
/// <param name="Unit">What one is: sheet, pad, cloth, pair, qt.</param>
/// <param name="Operations">Operation words that use it.</param>
/// <param name="GoesFar">True area one does; null where it is counted by a rule.</param>
/// <param name="Per">What it is counted by instead, such as <c>coat</c>, <c>plug</c>; empty with an area.</param>
/// <param name="PerAmount">How many for each of that.</param>
/// <param name="Range">Usual range, as written; may be empty.</param>
/// <param name="Rule">How it is counted, in words; may be empty.</param>
/// <param name="Pack">How many are sold together.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record Consumable(
    string Word, string Title, string Unit, ImmutableArray<string> Operations, Area? GoesFar, string Per, double PerAmount,
    string Range, string Rule, int Pack, Provenance Provenance);
