namespace CoatPlan.Paint;

/// <summary>How far off the area of each surface is in each draw, the same for every product that goes on it.</summary>
internal sealed class SurfaceLuck(string seed, int draws)
{
    private readonly Dictionary<string, double[]> known = new(StringComparer.Ordinal);

    /// <summary>The words that all draws of the job begin with.</summary>
    public string Seed => seed;

    /// <summary>Number of draws.</summary>
    public int Draws => draws;

    /// <summary>For each draw, where in its spread the surface's area lies, −1 to 1.</summary>
    public ReadOnlySpan<double> Of(string surface)
    {
        if (known.TryGetValue(surface, out var luck))
            return luck;

        var stream = new SeededDraws(seed, "area", surface);
        luck = new double[draws];
        for (var i = 0; i < draws; i++)
            luck[i] = stream.Around();
        return known[surface] = luck;
    }
}
