namespace CoatPlan.App;

/// <summary>One row of the presets as a person reads it.</summary>
/// <param name="Word">The word that a job file uses.</param>
/// <param name="Means">What it means, in a sentence or two.</param>
/// <param name="From">Where it comes from, and how well that is vouched for.</param>
internal sealed record PresetRow(string Word, string Means, string From)
{
    /// <summary>Whether a word stands in it, in whatever case.</summary>
    /// <param name="word">The word.</param>
    public bool Holds(string word) =>
        Word.Contains(word, StringComparison.OrdinalIgnoreCase) || Means.Contains(word, StringComparison.OrdinalIgnoreCase);
}
