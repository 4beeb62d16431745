using System.Runtime.InteropServices;

namespace CoatPlan.Prep;

/// <summary>Gathers what is known of something word by word; <see cref="Done"/> makes it whole.</summary>
/// <remarks>Each of <see cref="Traits"/> stands for good: gathering thirty keys by <see cref="Traits.With"/> would copy the first of them thirty times.</remarks>
internal sealed class TraitsBuilder
{
    private static readonly ImmutableArray<string> Yes = ["true"];
    private static readonly ImmutableArray<string> No = ["false"];

    // A surface has some thirty keys.
    private const int Room = 32;

    private readonly List<(string Key, ImmutableArray<string> Words)> entries;

    /// <summary>Nothing known yet.</summary>
    public TraitsBuilder() => entries = new(Room);

    /// <summary>Begins with what is known already, to which a few words are added.</summary>
    public TraitsBuilder(Traits known)
    {
        entries = new(known.Entries.Length + 2);
        entries.AddRange(known.Entries);
    }

    /// <summary>More words under a key.</summary>
    public TraitsBuilder With(string key, ImmutableArray<string> more)
    {
        var at = Traits.IndexOf(CollectionsMarshal.AsSpan(entries), key);
        if (at < 0)
            entries.Insert(~at, (key, Traits.Joined([], more)));
        else
            entries[at] = (key, Traits.Joined(entries[at].Words, more));
        return this;
    }

    /// <summary>A yes or no under a key.</summary>
    public TraitsBuilder Saying(string key, bool yes) => With(key, yes ? Yes : No);

    /// <summary>What was gathered.</summary>
    public Traits Done() => new([.. entries]);
}
