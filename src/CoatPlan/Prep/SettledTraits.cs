namespace CoatPlan.Prep;

/// <summary>The keys that rules add for other rules to ask.</summary>
internal static class SettledTraits
{
    /// <summary>Words of the operations already settled.</summary>
    public const string Does = "does";

    /// <summary>Whether one of them is dry abrasion.</summary>
    public const string Dust = "dust";
}
