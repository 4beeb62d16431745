namespace CoatPlan.Prep;

/// <summary>What is known of a surface or a job, as words by key, which rules are matched against.</summary>
/// <remarks>"Steel with oil and chips that stays": material = steel, condition = oily, chips; stays = true.</remarks>
internal sealed class Traits
{
    private readonly ImmutableSortedDictionary<string, ImmutableArray<string>> words;

    private Traits(ImmutableSortedDictionary<string, ImmutableArray<string>> words) => this.words = words;

    /// <summary>Nothing known.</summary>
    public static Traits None { get; } =
        new(ImmutableSortedDictionary.Create<string, ImmutableArray<string>>(StringComparer.Ordinal));

    /// <summary>The words of a key, in the order they were added; empty where nothing is known.</summary>
    public ImmutableArray<string> this[string key] => words.GetValueOrDefault(key, []);

    /// <summary>Every word with its key, keys in order.</summary>
    public IEnumerable<(string Key, string Word)> Words => words.SelectMany(pair => pair.Value.Select(word => (pair.Key, word)));

    /// <summary>The same with more words under a key.</summary>
    public Traits With(string key, params IEnumerable<string> more) =>
        new(words.SetItem(key, [.. this[key].Concat(more).Distinct(StringComparer.Ordinal)]));

    /// <summary>The same with a yes or no under a key.</summary>
    public Traits Saying(string key, bool yes) => With(key, yes ? "true" : "false");

    /// <summary>The same with all words of others.</summary>
    public Traits And(Traits others) => others.words.Aggregate(this, (traits, pair) => traits.With(pair.Key, pair.Value));

    /// <summary>Whether a key has a word.</summary>
    public bool Has(string key, string word) => this[key].Contains(word, StringComparer.Ordinal);
}
