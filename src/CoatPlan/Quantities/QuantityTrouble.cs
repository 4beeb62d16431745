namespace CoatPlan.Quantities;

/// <summary>Why a text is not the quantity that is due, as facts from which a sentence is made.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Due">What was due.</param>
/// <param name="Tried">The text as it was read.</param>
/// <param name="Found">What the unit that stands there measures; null: no known unit.</param>
/// <param name="Word">The part of the text that is wrong, e.g. an unknown unit; empty: all of it.</param>
public sealed record QuantityTrouble(QuantityTroubleKind Kind, Dimension Due, string Tried, Dimension? Found = null, string Word = "");
