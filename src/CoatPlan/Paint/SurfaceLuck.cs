namespace CoatPlan.Paint;

/// <summary>How far off the area of each surface is in each draw, the same for every product that goes on it.</summary>
internal sealed class SurfaceLuck(string seed)
{
    private readonly Dictionary<string, DrawnStretch> known = new(StringComparer.Ordinal);

    /// <summary>The words that all draws of the job begin with.</summary>
    public string Seed => seed;

    /// <summary>For each draw, where in its spread the surface's area lies, −1 to 1.</summary>
    public DrawnStretch Of(string surface)
    {
        if (!known.TryGetValue(surface, out var luck))
            known[surface] = luck = new DrawnStretch(new SeededDraws(seed, "area", surface));
        return luck;
    }
}
