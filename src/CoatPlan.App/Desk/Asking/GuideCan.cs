namespace CoatPlan.App.Desk.Asking;

/// <summary>A product as far as it was asked for.</summary>
/// <param name="Key">Its key in the job.</param>
/// <param name="Preset">The class that it is of.</param>
internal sealed record GuideCan(string Key, string Preset)
{
    /// <summary>Price of one; empty for not known, null for not asked yet.</summary>
    public string? Price { get; init; }
}
