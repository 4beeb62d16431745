namespace CoatPlan.Prep;

/// <summary>What is known of a surface or a job, as words by key, which rules are matched against.</summary>
/// <remarks>
/// "Steel with oil and chips that stays": material = steel, condition = oily, chips; stays = true. Kept as one array in the order of the keys: there are some
/// thirty, and hundreds of rules ask each surface for them.
/// </remarks>
internal sealed class Traits
{
    private readonly (string Key, ImmutableArray<string> Words)[] entries;

    private Traits((string Key, ImmutableArray<string> Words)[] entries) => this.entries = entries;

    /// <summary>Nothing known.</summary>
    public static Traits None { get; } = new([]);

    /// <summary>The words of a key, in the order they were added; empty where nothing is known.</summary>
    public ImmutableArray<string> this[string key] => IndexOf(key) is >= 0 and var at ? entries[at].Words : [];

    /// <summary>Every word with its key, keys in order.</summary>
    public IEnumerable<(string Key, string Word)> Words => entries.SelectMany(entry => entry.Words.Select(word => (entry.Key, word)));

    /// <summary>The same with more words under a key.</summary>
    public Traits With(string key, params IEnumerable<string> more)
    {
        var at = IndexOf(key);
        if (at < 0)
            return new(Inserted(~at, (key, [.. more.Distinct(StringComparer.Ordinal)])));

        var changed = entries.AsSpan().ToArray();
        changed[at].Words = Joined(entries[at].Words, more);
        return new(changed);
    }

    /// <summary>The same with a yes or no under a key.</summary>
    public Traits Saying(string key, bool yes) => With(key, yes ? "true" : "false");

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
    public bool Has(string key, string word) => IndexOf(key) is >= 0 and var at && entries[at].Words.Contains(word, StringComparer.Ordinal);

    /// <summary>Whether a key has any of some words.</summary>
    public bool HasAny(string key, ImmutableArray<string> words)
    {
        if (IndexOf(key) is not (>= 0 and var at))
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

    private static ImmutableArray<string> Joined(ImmutableArray<string> words, IEnumerable<string> more)
    {
        var joined = words;
        foreach (var word in more)
        {
            if (!joined.Contains(word, StringComparer.Ordinal))
                joined = joined.Add(word);
        }

        return joined;
    }

    private (string Key, ImmutableArray<string> Words)[] Inserted(int at, (string Key, ImmutableArray<string> Words) entry) =>
        [.. entries.AsSpan(0, at), entry, .. entries.AsSpan(at)];

    private int IndexOf(string key)
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
