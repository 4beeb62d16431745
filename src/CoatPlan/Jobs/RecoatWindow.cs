namespace CoatPlan.Jobs;

/// <summary>When the next coat may go on: from <paramref name="Least"/> to <paramref name="Most"/> after the coat before.</summary>
/// <remarks><c>10 min-1 h</c>, <c>after 24 h</c> (no end) and <c>within 1 h</c> (from dry to touch until one hour).</remarks>
/// <param name="Least">Earliest; null where the window opens at dry to touch.</param>
/// <param name="Most">Latest; null: stays open.</param>
/// <param name="FromTouch">Whether the window opens when the coat before is dry to touch (<c>within</c>).</param>
public readonly record struct RecoatWindow(Duration? Least, Duration? Most, bool FromTouch);
