namespace CoatPlan.Presets;

/// <summary>Looks up solvents as data sheets write them.</summary>
internal static class Solvents
{
    /// <summary>The solvent of a name, an alias or a CAS number; null: none.</summary>
    public static Solvent? Find(ImmutableArray<Solvent> solvents, string nameOrCas)
    {
        string wanted = nameOrCas.Trim();
        foreach (var row in solvents)
        {
            if (row.Cas == wanted || IsSame(row.Name, wanted)) return row;
        }

        return solvents.FirstOrDefault(row => row.Aliases.Any(alias => IsSame(alias, wanted)));
    }

    private static bool IsSame(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
