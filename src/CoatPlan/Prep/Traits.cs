namespace CoatPlan.Prep;

/// <summary>What is known of a surface or a job, as words by key, which rules are matched against.</summary>
/// <remarks>
/// "Steel with oil and chips that stays": material = steel, condition = oily, chips; stays = true. Kept as one array in the order of the keys: there are some
/// thirty, and hundreds of rules ask each surface for them.
/// </remarks>
internal sealed class Traits
{
    // Among so many words looking at each is quicker than hashing.
    private const int FewWords = 16;

    private readonly (string Key, ImmutableArray<string> Words)[] entries;

    /// <param name="entries">In the order of the keys, each key once.</param>
    internal Traits((string Key, ImmutableArray<string> Words)[] entries) => this.entries = entries;

    /// <summary>Nothing known.</summary>
    public static Traits None { get; } = new([]);

    /// <summary>Every key with its words, keys in order.</summary>
    internal ReadOnlySpan<(string Key, ImmutableArray<string> Words)> Entries => entries;

    /// <summary>The words of a key, in the order they were added; empty where nothing is known.</summary>
    public ImmutableArray<string> this[string key] => IndexOf(entries, key) is >= 0 and var at ? entries[at].Words : [];

    /// <summary>All words of several, under each key in the order in which they come first.</summary>
    public static Traits All(IEnumerable<Traits> several)
    {
        var found = new List<(string Key, GatheredWords Words)>();
        foreach (var traits in several)
        {
            var at = 0;
            foreach (var (key, words) in traits.entries)
            {
                var order = -1;
                while (at < found.Count && (order = string.CompareOrdinal(found[at].Key, key)) < 0)
                    at++;
                if (at == found.Count || order > 0)
                    found.Insert(at, (key, new GatheredWords()));
                found[at].Words.Add(words);
            }
        }

        return new([.. found.Select(entry => (entry.Key, entry.Words.All))]);
    }

    /// <summary>The same with one word more under a key.</summary>
    public Traits With(string key, string word) => Has(key, word) ? this : new TraitsBuilder(this).With(key, [word]).Done();

    /// <summary>The same with all words of others.</summary>
    public Traits And(Traits others)
    {
        var both = new List<(string Key, ImmutableArray<string> Words)>(entries.Length + others.entries.Length);
        var (mine, theirs) = (0, 0);
        while (mine < entries.Length || theirs < others.entries.Length)
        {
            var order = mine == entries.Length ? 1
                : theirs == others.entries.Length ? -1
                : string.CompareOrdinal(entries[mine].Key, others.entries[theirs].Key);
            both.Add(order < 0 ? entries[mine] : order > 0 ? others.entries[theirs] : (entries[mine].Key, Joined(entries[mine].Words, others.entries[theirs].Words)));
            mine += order <= 0 ? 1 : 0;
            theirs += order >= 0 ? 1 : 0;
        }

        return new([.. both]);
    }

    /// <summary>Whether a key has a word.</summary>
    public bool Has(string key, string word) => IndexOf(entries, key) is >= 0 and var at && entries[at].Words.Contains(word, StringComparer.Ordinal);

    /// <summary>Whether a key has any of some words.</summary>
    public bool HasAny(string key, ImmutableArray<string> words)
    {
        if (IndexOf(entries, key) is not (>= 0 and var at))
            return false;

        foreach (var known in entries[at].Words)
        {
            foreach (var word in words)
            {
                if (string.Equals(known, word, StringComparison.Ordinal))
                    return true;
            }
        }

        return false;
    }

    /// <summary>Words and those of others that are not among them.</summary>
    internal static ImmutableArray<string> Joined(ImmutableArray<string> words, ImmutableArray<string> more)
    {
        if (words.IsEmpty && more.Length <= 1)
            return more;
        if (words.Length + more.Length > FewWords)
            return [.. words.Concat(more).Distinct(StringComparer.Ordinal)];

        var joined = ImmutableArray.CreateBuilder<string>(words.Length + more.Length);
        joined.AddRange(words);
        foreach (var word in more)
        {
            if (!joined.Contains(word))
                joined.Add(word);
        }

        return joined.DrainToImmutable();
    }

    /// <summary>Where a key stands; where it would have to be put in, inverted, where it does not.</summary>
    internal static int IndexOf(ReadOnlySpan<(string Key, ImmutableArray<string> Words)> entries, string key)
    {
        var (low, high) = (0, entries.Length - 1);
        while (low <= high)
        {
            var middle = (low + high) / 2;
            var order = string.CompareOrdinal(entries[middle].Key, key);
            if (order == 0)
                return middle;
            (low, high) = order < 0 ? (middle + 1, high) : (low, middle - 1);
        }

        return ~low;
    }
}
