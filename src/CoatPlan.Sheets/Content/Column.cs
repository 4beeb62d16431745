namespace CoatPlan.Sheets.Content;

/// <summary>A column of a table.</summary>
/// <param name="Title">Its head.</param>
/// <param name="Weight">Its share of the width, more than zero.</param>
/// <param name="IsNumber">Whether its cells are numbers, set to the right.</param>
public sealed record Column(string Title, double Weight, bool IsNumber = false);
