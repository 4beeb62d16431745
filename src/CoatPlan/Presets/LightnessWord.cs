namespace CoatPlan.Presets;

/// <summary>A word for how light a colour is.</summary>
/// <param name="Word">black, dark, mid, light or white.</param>
/// <param name="Lightness">L*, 0 to 100.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record LightnessWord(string Word, double Lightness, Provenance Provenance);
