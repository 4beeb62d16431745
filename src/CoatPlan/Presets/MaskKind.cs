namespace CoatPlan.Presets;

/// <summary>A kind of thing that is masked.</summary>
/// <param name="Word">The contract's word, such as <c>sealing face</c>.</param>
/// <param name="Rate">Name of the masking rate: edge, fine-line or plug.</param>
/// <param name="NeverPainted">Whether painting it is a fault: warning mask-not-paint.</param>
/// <param name="Why">Why it is kept clean, in short words.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record MaskKind(string Word, string Rate, bool NeverPainted, string Why, Provenance Provenance);
