using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>A kind of masking tape and how long it may stay.</summary>
/// <param name="Word">Such as <c>crepe</c>.</param>
/// <param name="Title">What to ask for.</param>
/// <param name="Dwell">Longest stay indoors, out of the sun; null where unknown.</param>
/// <param name="HeatHigh">Highest temperature it stands for <paramref name="HeatFor"/>; null where unknown.</param>
/// <param name="HeatFor">How long it stands that.</param>
/// <param name="Range">Usual range of the dwell, as written; may be empty.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record MaskingTape(
    string Word, string Title, Duration? Dwell, Temperature? HeatHigh, Duration? HeatFor, string Range, Provenance Provenance);
