namespace CoatPlan.Prep;

/// <summary>Why an operation is done and what to mind, in sentences.</summary>
internal static class Reasons
{
    /// <summary>One sentence for each rule, with its source, in the order of the file.</summary>
    /// <param name="asking">Rules and the surfaces that each was asked for on.</param>
    public static string Why(IEnumerable<(PrepRule Rule, ImmutableArray<SettledSurface> Surfaces)> asking) =>
        string.Join(" ", asking.Select(pair => Sentence.WithSource(Fill(pair.Rule.Why!, pair.Rule.Condition, pair.Surfaces), pair.Rule.Source, pair.Rule.Status)));

    /// <summary>One note for each rule, in the order of the file.</summary>
    /// <param name="noting">Rules and the surfaces that each was asked for on.</param>
    public static ImmutableArray<string> Notes(IEnumerable<(PrepRule Rule, ImmutableArray<SettledSurface> Surfaces)> noting) =>
        [.. noting.Select(pair => Sentence.WithSource(Fill(pair.Rule.Note!, pair.Rule.Condition, pair.Surfaces), pair.Rule.Source, pair.Rule.Status))];

    /// <summary>The rules of a word over surfaces, each with those it holds for, in the order of the file.</summary>
    public static IEnumerable<(PrepRule Rule, ImmutableArray<SettledSurface> Surfaces)> ByRule(
        ImmutableArray<SettledSurface> surfaces, Func<SettledSurface, ImmutableArray<PrepRule>> rulesOf)
    {
        var holding = new SortedList<int, (PrepRule Rule, ImmutableArray<SettledSurface>.Builder Surfaces)>();
        foreach (var surface in surfaces)
        {
            foreach (var rule in rulesOf(surface))
            {
                if (!holding.TryGetValue(rule.Place, out var held))
                    holding[rule.Place] = held = (rule, ImmutableArray.CreateBuilder<SettledSurface>(surfaces.Length));
                held.Surfaces.Add(surface);
            }
        }

        return holding.Values.Select(held => (held.Rule, held.Surfaces.DrainToImmutable()));
    }

    /// <summary>A sentence with what was found on the surfaces put in.</summary>
    public static string Fill(string pattern, RuleCondition condition, ImmutableArray<SettledSurface> surfaces) =>
        Sentence.Fill(pattern, name => name switch
        {
            "surfaces" => Sentence.List(surfaces.Select(surface => surface.Name)),
            "first" => Products(surfaces, "first"),
            "over" => Products(surfaces, "over"),
            "mask" => Sentence.List(surfaces.SelectMany(surface => Masked(surface, condition))),
            _ => Sentence.List(surfaces.SelectMany(surface => condition.Found(name, surface.Known))),
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
