namespace CoatPlan.Prep;

/// <summary>Why an operation is done and what to mind, in sentences.</summary>
internal static class Reasons
{
    /// <summary>One sentence for each rule, with its source, in the order of the file.</summary>
    /// <param name="asking">Rules and the surfaces that each was asked for on.</param>
    public static string Why(IEnumerable<(PrepRule Rule, NamedSurfaces Surfaces)> asking) =>
        string.Join(" ", asking.Select(pair => Written(pair.Rule.Why!, pair.Rule, pair.Surfaces)));

    /// <summary>One note for each rule, in the order of the file.</summary>
    /// <param name="noting">Rules and the surfaces that each was asked for on.</param>
    public static ImmutableArray<string> Notes(IEnumerable<(PrepRule Rule, NamedSurfaces Surfaces)> noting) =>
        [.. noting.Select(pair => Written(pair.Rule.Note!, pair.Rule, pair.Surfaces))];

    /// <summary>The rules of an operation over surfaces, each with those it holds for, in the order of the file.</summary>
    /// <param name="surfaces">The surfaces.</param>
    /// <param name="operations">The operation as it is settled on each of them.</param>
    /// <param name="rulesOf">Which of its rules.</param>
    public static IEnumerable<(PrepRule Rule, NamedSurfaces Surfaces)> ByRule(
        NamedSurfaces surfaces, ImmutableArray<SettledOperation> operations, Func<SettledOperation, ImmutableArray<PrepRule>> rulesOf)
    {
        var holding = new List<(PrepRule Rule, ImmutableArray<SettledSurface>.Builder Surfaces)>();
        for (var i = 0; i < operations.Length; i++)
        {
            // Those of one surface are in the order of the file too, so each is looked for behind the one before.
            var at = 0;
            foreach (var rule in rulesOf(operations[i]))
            {
                while (at < holding.Count && holding[at].Rule.Place < rule.Place)
                    at++;
                if (at == holding.Count || holding[at].Rule.Place > rule.Place)
                    holding.Insert(at, (rule, ImmutableArray.CreateBuilder<SettledSurface>(operations.Length)));
                holding[at].Surfaces.Add(surfaces.All[i]);
            }
        }

        return holding.Select(held => (held.Rule, surfaces.Only(held.Surfaces.DrainToImmutable())));
    }

    /// <summary>A sentence with what was found on the surfaces put in, and where it comes from.</summary>
    private static string Written(string pattern, PrepRule rule, NamedSurfaces surfaces) =>
        Sentence.Fill(pattern, rule.Source, rule.Status, name => name switch
        {
            "surfaces" => surfaces.Names,
            "first" => Products(surfaces.All, "first"),
            "over" => Products(surfaces.All, "over"),
            "mask" => Sentence.List(surfaces.All.SelectMany(surface => Masked(surface, rule.Condition))),
            _ => Sentence.List(surfaces.All.SelectMany(surface => rule.Condition.Found(name, surface.Known))),
        });

    private static IEnumerable<string> Masked(SettledSurface surface, RuleCondition condition)
    {
        var kinds = condition.Found("mask", surface.Known).ToHashSet(StringComparer.Ordinal);
        return surface.Surface.Masks.Where(mask => mask.Kind is null || kinds.Contains(mask.Kind)).Select(mask => mask.What);
    }

    private static string Products(ImmutableArray<SettledSurface> surfaces, string key)
    {
        var names = surfaces.SelectMany(surface => surface.Layers
            .Where(layer => layer.Label.Preset is { } preset && surface.Known.Has(key, preset))
            .Select(layer => layer.Label.Name)
            .Take(1));
        var list = Sentence.List(names);
        return list.Length == 0 ? "the first coat" : list;
    }
}
