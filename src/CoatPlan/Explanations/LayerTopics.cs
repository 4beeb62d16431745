using CoatPlan.Paint;

namespace CoatPlan.Explanations;

/// <summary>What can be asked of a layer: its coats, who asks for them, its film; and of cans that were weighed.</summary>
internal static class LayerTopics
{
    public static IEnumerable<Topic> Of(Workings workings, Told told) =>
        workings.Coats.Layers.SelectMany((layer, i) => Of(layer, i, workings, told)).Concat(Weighed(workings));

    private static IEnumerable<Topic> Of(SurfaceLayer layer, int at, Workings workings, Told told)
    {
        var (surface, product) = (layer.Surface.Id, layer.Label.Key);
        Topic Say(string field, string name, Func<Explanation> explain) => new(
            $"layers[{at}].{field}", [$"{name} {surface} {product}", $"{name} {surface} {layer.Layer}", $"{name} {layer.Surface.Surface.Name} {product}"], explain);

        yield return Say("coats", "coats", () => Coats(layer, told));
        yield return Say("layer", "layer", () => Told.Given("place in the system, from 1", Told.Plain(layer.Layer), Told.JobFile, layer.Layer));
        yield return Say("labelLeast", "label coats", () => Least(layer, told));
        yield return Say("labelMost", "most coats", () => Told.Given("most coats of the label", Told.Plain(layer.Coats.LabelMost), told.Said(layer.Label, "coats"), layer.Coats.LabelMost));
        if (layer.Coats.ByJob is { } byJob)
            yield return Say("byJob", "asked coats", () => Told.Given("coats that the system asks", Told.Plain(byJob), Told.JobFile, byJob));
        if (layer.Coats.ForHiding is not null)
            yield return Say("forHiding", "hiding", () => Hiding(layer, told));
        if (layer.Primer is { } primer)
        {
            yield return Say("primerCoats", "primer", () => Told.Sum(
                $"coats that hide over a {primer.Word} primer", Told.Plain(primer.Coats), primer.Coats,
                "the shade over which fewest coats hide, the nearest to the colour where several do", "two-constant film theory (Kubelka and Munk), see hiding", Hiding(layer, told)));
        }

        if (WetFilm.OnThePart(layer.Label) is { } wet)
        {
            yield return Say("wetUm", "wet film", () => Told.Sum(
                "wet film of one coat, propellant gone", told.Format.Film(wet), wet.Micrometers, "dry film × (1 − propellant by volume) ÷ volume solids", "MIL-HDBK-1110 §2.1.5 (published); propellant flashes off before it lands",
                DryFilm(layer, told), Solids(layer, told),
                Told.Sum("propellant by volume", Told.Percent(WetFilm.PropellantByVolume(layer.Label)), WetFilm.PropellantByVolume(layer.Label), "Σ mass share × density ÷ liquid density", told.Said(layer.Label, "solvents"))));
        }

        if (layer.Label.DryFilm is { } film)
        {
            yield return Say("dryUm", "dry film", () => Told.Sum(
                "dry film of all coats", told.Format.Film(film * layer.Coats.Coats), (film * layer.Coats.Coats).Micrometers, "dry film of one coat × coats", "a plain product", DryFilm(layer, told), Coats(layer, told)));
        }
    }

    private static Explanation Coats(SurfaceLayer layer, Told told) => Told.Sum(
        $"coats of {layer.Label.Name} on {layer.Surface.Surface.Name}", Told.Plain(layer.Coats.Coats), layer.Coats.Coats,
        "the largest of what the system, the label and hiding ask; the label's most bounds what hiding adds, what the system asks is never reduced",
        "common practice",
        layer.Coats.ByJob is { } asked ? Told.Given("coats that the system asks", Told.Plain(asked), Told.JobFile, asked) : null,
        Least(layer, told),
        Told.Given("most coats of the label", Told.Plain(layer.Coats.LabelMost), told.Said(layer.Label, "coats"), layer.Coats.LabelMost),
        layer.Coats.ForHiding is null ? null : Hiding(layer, told));

    private static Explanation Least(SurfaceLayer layer, Told told) =>
        Told.Given("fewest coats of the label", Told.Plain(layer.Coats.LabelLeast), told.Said(layer.Label, "coats"), layer.Coats.LabelLeast);

    private static Explanation Hiding(SurfaceLayer layer, Told told) => Told.Sum(
        "coats that hide what is below", Told.Plain(layer.Coats.ForHiding!.Value), layer.Coats.ForHiding,
        "fewest coats n whose film, by R = (1 − Rg·(a − b·coth(b·n·S·X))) / (a − Rg + b·coth(b·n·S·X)), reaches the contrast ratio over black and white or differs from the full colour by less than what is seen",
        "Kubelka and Munk; ISO 6504-3, ASTM D2805 usage (from memory)",
        layer.Label.HidesAfter is { } measured
            ? Told.Given("coats that hid black and white on a test panel", Told.Plain(measured), told.Said(layer.Label, "hiding"), measured)
            : Told.Given("contrast ratio of one coat", Told.Plain(layer.Label.Hiding), told.Said(layer.Label, "hiding"), layer.Label.Hiding),
        layer.Label.Lightness is { } own ? Told.Given("lightness L* of the film", Told.Plain(own, 1), told.Said(layer.Label, "lightness"), own) : null,
        told.Figure("hide-contrast"), told.Figure("hide-lightness"));

    private static Explanation DryFilm(SurfaceLayer layer, Told told) => Told.Given(
        "dry film of one coat", told.Format.Film(layer.Label.DryFilm!.Value), told.Said(layer.Label, "dry-film"), layer.Label.DryFilm.Value.Micrometers);

    private static Explanation? Solids(SurfaceLayer layer, Told told) => layer.Label.SolidsByVolume is { } solids
        ? Told.Given("solids by volume of the whole contents", Told.Percent(solids.DecimalFractions), told.Said(layer.Label, "solids"), solids.DecimalFractions)
        : null;

    private static IEnumerable<Topic> Weighed(Workings workings)
    {
        for (var i = 0; i < workings.Weighed.Length; i++)
        {
            var can = workings.Weighed[i];
            var at = i;
            Topic Say(string field, string name, double number, string what, string formula) => new(
                $"weighed[{at}].{field}", [$"{name} {can.Product} {can.Layer} {can.Coat}"],
                () => Told.Sum(what, Told.Plain(number), number, formula, "two weighings, in the job file; 2 % stays in a can (A-A-1551, published)"));

            yield return Say("leftCans", "left", can.LeftCans, $"left of {can.Product} that will still spray, in packages", "what was weighed ÷ net contents − what stays in the can");
            yield return Say("nextCans", "next coat", can.NextCans, "what the next coat on those surfaces takes, in packages", "sum of its coats, see packages of each surface");
            yield return Say("restCans", "rest", can.RestCans, "what all further coats on those surfaces take, in packages", "sum of those coats, see packages of each surface");
            yield return Say("layer", "weighed layer", can.Layer, "layer after which it was weighed", "as the entry under done says");
            yield return Say("coat", "weighed coat", can.Coat, "coat after which it was weighed", "as the entry under done says");
        }
    }
}
