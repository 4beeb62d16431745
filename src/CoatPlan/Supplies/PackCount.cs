namespace CoatPlan.Supplies;

/// <summary>Packs bought whole, need by need: what a pack holds beyond one need serves the next that is bought under the same name.</summary>
internal sealed class PackCount
{
    private readonly Dictionary<string, int> counted = new(StringComparer.Ordinal);

    /// <summary>Packs that a further need adds.</summary>
    /// <param name="name">What it is bought as.</param>
    /// <param name="amount">How many of it, at least 0.</param>
    /// <param name="pack">How many are in a pack, 1 or more.</param>
    public int Add(string name, int amount, int pack)
    {
        var before = counted.GetValueOrDefault(name);
        counted[name] = before + amount;
        return Packs(before + amount, pack) - Packs(before, pack);
    }

    /// <summary>Packs that hold so many.</summary>
    /// <param name="amount">How many, at least 0.</param>
    /// <param name="pack">How many are in a pack, 1 or more.</param>
    public static int Packs(int amount, int pack) => (amount + pack - 1) / pack;
}
