using CoatPlan.Jobs;
using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>Something used up by an operation that is not paint.</summary>
/// <param name="Word">Key of the row, such as <c>sheet-p320</c>.</param>
/// <param name="Title">What to ask for at the counter.</param>
/// <param name="Unit">What one is: sheet, pad, cloth, pair, qt.</param>
/// <param name="Operations">Operation words that use it.</param>
/// <param name="GoesFar">True area one does; null where it is counted by a rule.</param>
/// <param name="Per">What it is counted by instead, such as <c>coat</c>, <c>plug</c>; empty with an area.</param>
/// <param name="PerAmount">How many for each of that.</param>
/// <param name="Range">Usual range, as written; may be empty.</param>
/// <param name="Rule">How it is counted, in words; may be empty.</param>
/// <param name="Pack">How many are sold together.</param>
/// <param name="Price">Price of one pack in the job's currency; null: unknown, as in all rows that come with the program.</param>
/// <param name="Also">Other names a person may call it by.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record Consumable(
    string Word, string Title, string Unit, ImmutableArray<string> Operations, Area? GoesFar, string Per, double PerAmount,
    string Range, string Rule, int Pack, decimal? Price, ImmutableArray<string> Also, Provenance Provenance)
{
    /// <summary>Whether several who work at the same time share one: what is poured out or cut off, and not what each holds in the hand or wears.</summary>
    public bool IsShared => Unit is "qt" or "ft2";

    /// <summary>Whether a person's name for something means it: its word, its title, the title up to the first comma, or another of its names.</summary>
    /// <param name="name">As a person writes it; case, hyphens and a plural s do not matter.</param>
    public bool IsCalled(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var plain = Plain(name);
        return Plain(Word) == plain || Plain(Title) == plain || Plain(Title.Split(',')[0]) == plain || Also.Any(other => Plain(other) == plain);
    }

    private static string Plain(string name)
    {
        var folded = JobWords.Fold(name);
        return folded.EndsWith('s') ? folded[..^1] : folded;
    }
}
