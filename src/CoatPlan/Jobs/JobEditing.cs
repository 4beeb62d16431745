using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>A job file after an edit, or why it could not be edited.</summary>
/// <param name="Document">The file with its new text; null: there are problems and the text stays as it is.</param>
/// <param name="Problems">Why not; empty: it was edited.</param>
public sealed record JobEditing(JobDocument? Document, ImmutableArray<Problem> Problems)
{
    /// <summary>The new text; null: there are problems and the text stays as it is.</summary>
    public string? Text => Document?.Text;
}
