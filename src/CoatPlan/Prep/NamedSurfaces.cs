namespace CoatPlan.Prep;

/// <summary>Surfaces that sentences are about.</summary>
internal sealed class NamedSurfaces(ImmutableArray<SettledSurface> all)
{
    private string? names;

    /// <summary>In the order of the job.</summary>
    public ImmutableArray<SettledSurface> All => all;

    /// <summary>What they are called, as in "the hood, the grille and the tray": put together once, however many sentences name them.</summary>
    public string Names => names ??= Sentence.List(all.Select(surface => surface.Name));

    /// <summary>Those on which an operation is done, and for each how.</summary>
    /// <param name="word">The contract's word.</param>
    public (NamedSurfaces Surfaces, ImmutableArray<SettledOperation> Operations) Doing(string word)
    {
        var surfaces = ImmutableArray.CreateBuilder<SettledSurface>(all.Length);
        var operations = ImmutableArray.CreateBuilder<SettledOperation>(all.Length);
        foreach (var surface in all)
        {
            if (!surface.Operations.TryGetValue(word, out var operation))
                continue;

            surfaces.Add(surface);
            operations.Add(operation);
        }

        return (Only(surfaces.DrainToImmutable()), operations.DrainToImmutable());
    }

    /// <summary>These themselves where some of them are all of them.</summary>
    public NamedSurfaces Only(ImmutableArray<SettledSurface> some) => some.Length == all.Length ? this : new(some);
}
