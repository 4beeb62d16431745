namespace CoatPlan.Sheets.Content;

/// <summary>One step to tick off, with room for what is really done and read.</summary>
/// <param name="When">From when to when.</param>
/// <param name="Title">What to do.</param>
/// <param name="Where">On which surfaces; empty for the whole job.</param>
/// <param name="Details">What to wait for, why, and how far it can slip, a line each.</param>
/// <param name="Readings">What to read and write down, each with its limits; empty for none.</param>
public sealed record WorkStep(string When, string Title, string Where, ImmutableArray<string> Details, ImmutableArray<string> Readings) : Block
{
    /// <summary>Who ticks it off, where it is more than one; empty for one box.</summary>
    public ImmutableArray<string> Ticks { get; init; } = [];

    /// <summary>What else is written down, short enough for one line.</summary>
    public ImmutableArray<string> Blanks { get; init; } = ["really from", "to"];
}
