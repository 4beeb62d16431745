using System.Collections.Frozen;

namespace CoatPlan.Presets;

/// <summary>Rows of a table by their word, for a table that is read once and asked often.</summary>
/// <param name="rows">The table; of rows with the same word the first counts.</param>
/// <param name="wordOf">The word of a row.</param>
/// <typeparam name="T">What a row is.</typeparam>
internal sealed class RowsByWord<T>(ImmutableArray<T> rows, Func<T, string> wordOf)
    where T : class
{
    private readonly FrozenDictionary<string, T> byWord = rows.DistinctBy(wordOf, StringComparer.Ordinal).ToFrozenDictionary(wordOf, StringComparer.Ordinal);

    /// <summary>The row of a word.</summary>
    /// <param name="word">The word.</param>
    /// <exception cref="ArgumentException">No row has the word.</exception>
    public T this[string word] => byWord.GetValueOrDefault(word) ?? throw new ArgumentException($"no {typeof(T).Name} is called '{word}'", nameof(word));
}
