namespace CoatPlan.Prep;

/// <summary>What is known of a surface or a job, as words by key, which rules are matched against.</summary>
/// <remarks>
/// "Steel with oil and chips that stays": material = steel, condition = oily, chips; stays = true. Hundreds of rules ask each surface for the same
/// thirty keys, so the words of each of <see cref="TraitKeys.Sorted"/> stand at its place; what files add is looked for by name.
/// </remarks>
internal sealed class Traits
{
    private readonly ImmutableArray<string>[] common;
    private readonly ImmutableArray<(string Key, ImmutableArray<string> Words)> others;

    /// <param name="common">For each of <see cref="TraitKeys.Sorted"/> its words, each once.</param>
    /// <param name="others">Other keys, each once and in order, with their words, each once.</param>
    internal Traits(ImmutableArray<string>[] common, ImmutableArray<(string Key, ImmutableArray<string> Words)> others)
    {
        this.common = common;
        this.others = others;
    }

    /// <summary>For each of <see cref="TraitKeys.Sorted"/> its words.</summary>
    internal ReadOnlySpan<ImmutableArray<string>> Common => common;

    /// <summary>Keys that files added, in order, with their words.</summary>
    internal ImmutableArray<(string Key, ImmutableArray<string> Words)> Others => others;

    /// <summary>Every key of which something is known with its words, keys in order.</summary>
    public IEnumerable<(string Key, ImmutableArray<string> Words)> Entries
    {
        get
        {
            var other = 0;
            for (var place = 0; place < common.Length; place++)
            {
                for (; other < others.Length && string.CompareOrdinal(others[other].Key, TraitKeys.Sorted[place]) < 0; other++)
                    yield return others[other];
                if (!common[place].IsEmpty)
                    yield return (TraitKeys.Sorted[place], common[place]);
            }

            for (; other < others.Length; other++)
                yield return others[other];
        }
    }

    /// <summary>The words of a key, in the order they were added; empty where nothing is known.</summary>
    public ImmutableArray<string> this[string key] => this[new TraitKey(key)];

    /// <summary>The words of a key, in the order they were added; empty where nothing is known.</summary>
    public ImmutableArray<string> this[TraitKey key] => key.Place >= 0 ? common[key.Place] : Other(key.Name);

    /// <summary>All words of several, under each key in the order in which they come first.</summary>
    public static Traits All(IEnumerable<Traits> several)
    {
        var common = TraitKeys.Sorted.Select(_ => new GatheredWords()).ToArray();
        var others = new SortedDictionary<string, GatheredWords>(StringComparer.Ordinal);
        foreach (var traits in several)
        {
            for (var place = 0; place < common.Length; place++)
                common[place].Add(traits.common[place]);
            foreach (var (key, words) in traits.others)
            {
                if (!others.TryGetValue(key, out var gathered))
                    others[key] = gathered = new GatheredWords();
                gathered.Add(words);
            }
        }

        return new([.. common.Select(words => words.All)], [.. others.Select(pair => (pair.Key, pair.Value.All))]);
    }

    /// <summary>The same with one word more under a key.</summary>
    public Traits With(string key, string word) => Has(key, word) ? this : new TraitsBuilder(this).With(key, [word]).Done();

    /// <summary>The same with all words of others.</summary>
    public Traits And(Traits more) => new TraitsBuilder(this).With(more).Done();

    /// <summary>Whether a key has a word.</summary>
    public bool Has(string key, string word) => this[key].Contains(word);

    /// <summary>Whether a key has any of some words.</summary>
    public bool HasAny(TraitKey key, ImmutableArray<string> words)
    {
        foreach (var known in this[key])
        {
            foreach (var word in words)
            {
                if (string.Equals(known, word, StringComparison.Ordinal))
                    return true;
            }
        }

        return false;
    }

    private ImmutableArray<string> Other(string key)
    {
        foreach (var (other, words) in others)
        {
            if (other == key)
                return words;
        }

        return [];
    }
}
