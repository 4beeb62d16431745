namespace CoatPlan.Prep;

/// <summary>Words from many places, each once, in the order in which they come first.</summary>
internal sealed class GatheredWords
{
    // Among so many words looking at each is quicker than hashing.
    private const int Few = 16;

    private readonly List<string> words = [];
    private HashSet<string>? seen;

    /// <summary>All of them.</summary>
    public ImmutableArray<string> All => [.. words];

    /// <summary>How many there are.</summary>
    public int Count => words.Count;

    /// <summary>One of them, from 0.</summary>
    public string this[int at] => words[at];

    /// <summary>Adds those that are new.</summary>
    public void Add(ImmutableArray<string> more)
    {
        foreach (var word in more)
            Add(word);
    }

    /// <summary>Adds one that is new.</summary>
    public void Add(string word)
    {
        if (IsNew(word))
            words.Add(word);
    }

    private bool IsNew(string word)
    {
        if (words.Count >= Few)
            seen ??= new(words, StringComparer.Ordinal);
        return seen?.Add(word) ?? !words.Contains(word);
    }
}
