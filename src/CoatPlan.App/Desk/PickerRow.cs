namespace CoatPlan.App.Desk;

/// <summary>A row to pick.</summary>
/// <param name="Word">What is picked.</param>
/// <param name="Means">What it means.</param>
internal sealed record PickerRow(string Word, string Means);
