namespace CoatPlan.Prep;

/// <summary>A row of a rule file: something that follows from what is known, which other rows then ask for.</summary>
/// <param name="Id">Its name in the file.</param>
/// <param name="Trait">Key that it adds to.</param>
/// <param name="Word">Word that it adds.</param>
/// <param name="Condition">When it follows.</param>
internal sealed record DerivedTrait(string Id, string Trait, string Word, RuleCondition Condition)
{
    /// <summary>Reads the rows of a file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="keys">Keys that rows may ask for; those of the rows are added.</param>
    public static ImmutableArray<DerivedTrait> Read(RuleFile file, HashSet<string> keys) => file.Rows("traits", "trait", row =>
    {
        var trait = new DerivedTrait(row.Key, row.Text("trait"), row.OptionalText("word") ?? "true", row.Condition(keys));
        keys.Add(trait.Trait);
        return trait;
    });

    /// <summary>What is known with all that follows from it, row after row.</summary>
    public static Traits Follow(ImmutableArray<DerivedTrait> rows, Traits known) =>
        rows.Aggregate(known, (traits, row) => row.Condition.Holds(traits) ? traits.With(row.Trait, row.Word) : traits);
}
