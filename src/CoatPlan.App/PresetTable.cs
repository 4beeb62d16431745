namespace CoatPlan.App;

/// <summary>One table of the presets as a person reads it: in the list of presets and in pickers.</summary>
/// <param name="Title">What its rows are.</param>
/// <param name="Rows">Its rows, in the order of the file.</param>
internal sealed record PresetTable(string Title, ImmutableArray<PresetRow> Rows)
{
    /// <summary>The same table with the rows that hold a word, in whatever case.</summary>
    /// <param name="word">The word.</param>
    public PresetTable Holding(string word) => this with { Rows = [.. Rows.Where(row => row.Holds(word))] };
}
