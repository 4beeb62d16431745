namespace CoatPlan.Sheets.Content;

/// <summary>A stretch of one day on a lane of the timeline.</summary>
/// <param name="From">Local wall time, on the day.</param>
/// <param name="To">Local wall time, on the day or at the midnight that ends it; not before <paramref name="From"/>.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Texts">What may be written beside it where there is room, the fullest first; empty for nothing.</param>
public sealed record TimelineBar(LocalDateTime From, LocalDateTime To, TimelineKind Kind, ImmutableArray<string> Texts);
