namespace CoatPlan.App.Screens;

/// <summary>A stretch of time on a lane of the timeline.</summary>
/// <param name="From">Its start.</param>
/// <param name="To">Its end.</param>
/// <param name="Lane">Which lane of its kind, from 0.</param>
/// <param name="Glyph">The character that fills it.</param>
/// <param name="Ink">Its ink.</param>
/// <param name="Text">What is written into it where it is long enough.</param>
/// <param name="Chosen">Whether it is the chosen step's.</param>
internal sealed record TimelineBar(LocalDateTime From, LocalDateTime To, int Lane, char Glyph, Ink Ink, string Text, bool Chosen);
