namespace CoatPlan;

/// <summary>What is in a file that a job names, or why it cannot be read.</summary>
/// <param name="Text">The text; null where it cannot be read.</param>
/// <param name="WhyNot">Why not, as a clause; empty where it can.</param>
public sealed record FileText(string? Text, string WhyNot)
{
    /// <summary>A file that was read.</summary>
    public static FileText Of(string text) => new(text, "");

    /// <summary>A file that cannot be read.</summary>
    public static FileText Unreadable(string whyNot) => new(null, whyNot);
}
