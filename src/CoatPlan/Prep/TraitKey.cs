namespace CoatPlan.Prep;

/// <summary>A key that a rule asks for, with its place found once, when the rule is read.</summary>
/// <param name="Name">As a file has it.</param>
internal readonly record struct TraitKey(string Name)
{
    /// <summary>See <see cref="TraitKeys.PlaceOf"/>.</summary>
    public int Place { get; } = TraitKeys.PlaceOf(Name);
}
