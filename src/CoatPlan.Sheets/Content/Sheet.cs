namespace CoatPlan.Sheets.Content;

/// <summary>What one sheet says, before anybody decides how it looks: every renderer takes the same sheet.</summary>
/// <param name="Name">File name without ending, such as <c>work</c>.</param>
/// <param name="Title">Title at the head of every page.</param>
/// <param name="Job">The job's name.</param>
/// <param name="Blocks">What it says, top to bottom.</param>
public sealed record Sheet(string Name, string Title, string Job, ImmutableArray<Block> Blocks)
{
    /// <summary>How the paper lies.</summary>
    public SheetShape Shape { get; init; } = SheetShape.Portrait;

    /// <summary>What may stand for the names that the person chose, where a renderer has no letters for them.</summary>
    public ImmutableArray<OtherName> Names { get; init; } = [];
}
