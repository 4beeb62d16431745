namespace CoatPlan.Prep;

/// <summary>Gathers what is known of something word by word; <see cref="Done"/> makes it whole.</summary>
/// <remarks>Each of <see cref="Traits"/> stands for good: gathering thirty keys by <see cref="Traits.With"/> would copy the first of them thirty times.</remarks>
internal sealed class TraitsBuilder
{
    private static readonly ImmutableArray<string> Yes = ["true"];
    private static readonly ImmutableArray<string> No = ["false"];

    // Few surfaces have any.
    private static readonly ImmutableSortedDictionary<string, ImmutableArray<string>> NoOthers =
        ImmutableSortedDictionary.Create<string, ImmutableArray<string>>(StringComparer.Ordinal);

    private readonly ImmutableArray<string>[] common;
    private ImmutableSortedDictionary<string, ImmutableArray<string>> others = NoOthers;

    /// <summary>Nothing known yet.</summary>
    public TraitsBuilder()
    {
        common = new ImmutableArray<string>[TraitKeys.Sorted.Length];
        Array.Fill(common, []);
    }

    /// <summary>Begins with what is known already.</summary>
    public TraitsBuilder(Traits known)
    {
        common = known.Common.ToArray();
        foreach (var (key, words) in known.Others)
            others = others.Add(key, words);
    }

    /// <summary>More words under a key.</summary>
    public TraitsBuilder With(string key, ImmutableArray<string> more)
    {
        if (TraitKeys.PlaceOf(key) is >= 0 and var place)
            common[place] = Joined(common[place], more);
        else
            others = others.SetItem(key, Joined(others.GetValueOrDefault(key, []), more));
        return this;
    }

    /// <summary>All words of others.</summary>
    public TraitsBuilder With(Traits more)
    {
        for (var place = 0; place < common.Length; place++)
            common[place] = Joined(common[place], more.Common[place]);
        foreach (var (key, words) in more.Others)
            With(key, words);
        return this;
    }

    /// <summary>A yes or no under a key.</summary>
    public TraitsBuilder Saying(string key, bool yes) => With(key, yes ? Yes : No);

    /// <summary>What was gathered; nothing is added afterwards.</summary>
    public Traits Done() => new(common, others.IsEmpty ? [] : [.. others.Select(pair => (pair.Key, pair.Value))]);

    private static ImmutableArray<string> Joined(ImmutableArray<string> words, ImmutableArray<string> more)
    {
        if (more.IsEmpty)
            return words;
        if (words.IsEmpty && more.Length == 1)
            return more;

        var joined = new GatheredWords();
        joined.Add(words);
        joined.Add(more);
        return joined.All;
    }
}
