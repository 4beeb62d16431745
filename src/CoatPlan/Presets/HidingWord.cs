namespace CoatPlan.Presets;

/// <summary>What a label's word for hiding stands for.</summary>
/// <param name="Word">good, fair or poor.</param>
/// <param name="ContrastRatio">Of one coat over black and white, over 0 to 1.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record HidingWord(string Word, double ContrastRatio, Provenance Provenance);
