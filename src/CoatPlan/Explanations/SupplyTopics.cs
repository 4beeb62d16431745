using CoatPlan.Jobs;
using CoatPlan.Paint;
using CoatPlan.Plans;
using CoatPlan.Presets;
using CoatPlan.Supplies;

namespace CoatPlan.Explanations;

/// <summary>What can be asked of a coating: cans, paint, price.</summary>
internal static class SupplyTopics
{
    private const string Draws = "seeded draws: each surface's area within its spread, the reach of a can within its own, clearing the nozzle each session; the same job draws the same";

    public static IEnumerable<Topic> Of(Workings workings, Told told)
    {
        var all = workings.Supplies.Sum(supply => supply.Cans);
        yield return new Topic("supplies", ["cans", "paint"], () => Told.Sum(
            "cans of all coatings", Told.Plain(all), all, "sum over the coatings", "see each", [.. workings.Supplies.Select((supply, i) => Cans(workings, told, supply, workings.Paint[i]))]));
        for (var i = 0; i < workings.Supplies.Length; i++)
        {
            foreach (var topic in Of(workings, told, workings.Supplies[i], workings.Paint[i], i))
                yield return topic;
        }
    }

    /// <summary>What one coat on one surface takes, in packages.</summary>
    public static Explanation Coat(SurfaceCoat coat, Told told)
    {
        var label = coat.On.Label;
        return Told.Sum(
            $"{label.Name}, {(coat.IsMist ? "mist coat" : $"coat {Told.Plain(coat.Coat)}")} on {coat.On.Surface.Surface.Name}", $"{Told.Plain(coat.Packages)} of a package", coat.Packages,
            coat.IsMist
                ? "area × ½ ÷ area one package covers × what sprays past the part's form"
                : "area ÷ area one package covers × what sprays past the part's form",
            "trade reference on spreading (published); a mist coat counts half",
            Told.Sum(
                "area of all pieces", told.Format.Area(coat.On.Area), coat.On.Area.SquareMeters, "true area of one piece × pieces × share that is sprayed", "a plain product",
                SurfaceTopics.Area(coat.On.Surface, told),
                Told.Given("pieces", Told.Plain(coat.On.Surface.Count), Told.JobFile, coat.On.Surface.Count),
                coat.On.Share.DecimalFractions < 1 ? Told.Given("share that is bare after prep, the only part sprayed", Told.Percent(coat.On.Share.DecimalFractions), "the job file or the condition's preset") : null),
            Reach(label, told));
    }

    /// <summary>What one package covers, on the basis that counts.</summary>
    private static Explanation Reach(Label label, Told told)
    {
        var reach = PackageReach.Of(label);
        var covers = reach.ByCovers is { } said
            ? Told.Given(label.CoversMeasured ? "area one package covers, as a test panel gave it" : "area one package covers, as the label puts it", told.Format.Area(said), told.Said(label, "covers"), said.SquareMeters)
            : null;
        var solids = reach.BySolids is { } computed
            ? Told.Sum(
                "area one package covers by solids", told.Format.Area(computed), computed.SquareMeters, "net volume × volume solids ÷ dry film × (1 − loss)",
                "m²/L = 10 × VS% ÷ DFT(µm), MIL-HDBK-1110 §2.1.5 (published); practical = theoretical × (1 − loss), trade reference (published)",
                Told.Given("net volume", told.Format.Liquid(label.NetVolume!.Value), told.Said(label, "package"), label.NetVolume.Value.Milliliters),
                Told.Given("solids by volume", Told.Percent(label.SolidsByVolume!.Value.DecimalFractions), told.Said(label, "solids"), label.SolidsByVolume.Value.DecimalFractions),
                Told.Given("dry film of one coat", told.Format.Film(label.DryFilm!.Value), told.Said(label, "dry-film"), label.DryFilm.Value.Micrometers),
                Told.Given("share lost on a flat panel", Told.Percent(label.Loss.DecimalFractions), label.Origins.GetValueOrDefault("loss") == Origin.Job ? Told.JobFile : Told.From(label.Method.Provenance), label.Loss.DecimalFractions))
            : null;
        var counts = reach.Area is { } area ? told.Format.Area(area) : "unknown";
        return Told.Sum(
            "area one package covers in one coat on a flat panel", counts, reach.Area?.SquareMeters,
            reach is { ByCovers: not null, BySolids: not null } ? "the lesser of the two ways: the larger demand counts" : "the one way that is known",
            "the job file's contract", covers, solids);
    }

    private static IEnumerable<Topic> Of(Workings workings, Told told, PlanSupply supply, PaintSupply paint, int at)
    {
        var demand = paint.Demand;
        Topic Say(string field, string name, Func<Explanation> explain) => new(
            $"supplies[{supply.Product}].{field}", [$"{name} {supply.Product}", $"supplies[{at}].{field}", $"{name} {supply.Name}"], explain);

        yield return Say("cans", "cans", () => Cans(workings, told, supply, paint));
        yield return Say("areaCoatsM2", "area coats", () => Told.Sum(
            "area times coats", told.Area(supply.AreaCoatsM2), supply.AreaCoatsM2, "Σ area × pieces × coats, a mist coat counted half, all stations", "the job file's contract",
            [.. Coats(workings, supply).Select(coat => (Explanation?)Coat(coat, told))]));
        if (supply.LikelyMl is { } ml)
        {
            yield return Say("likelyMl", "paint", () => Told.Sum(
                "likely demand before reserve, whole contents", told.Paint(ml), ml, "likely packages × net volume", "a plain product",
                Likely(workings, told, supply, demand), Told.Given("net volume", told.Format.Liquid(demand.Label.NetVolume!.Value), told.Said(demand.Label, "package"), demand.Label.NetVolume.Value.Milliliters)));
        }

        yield return Say("cansLow", "low cans", () => Low(supply, told, demand));
        yield return Say("cansHigh", "high cans", () => Told.Sum(
            "cans if little goes well", Told.Plain(supply.CansHigh), supply.CansHigh, "the larger of the cans needed and what covers 90 % of the draws", Draws, Spread(demand, told)));
        yield return Say("buy", "buy", () => Buy(workings, told, supply, paint));
        if (supply.Price is { } price)
        {
            yield return Say("price", "price", () => Told.Sum(
                $"price of what is bought of {supply.Name}", MinorUnits.Write(price, Currency(workings.Job)), (double)price, "price of one × packs bought whole × packages in a pack", Told.JobFile,
                demand.Label.Price is { } one ? Told.Given("price of one package", MinorUnits.Write(one, Currency(workings.Job)), Told.JobFile, (double)one) : null,
                Pack(supply),
                Buy(workings, told, supply, paint)));
        }

        yield return Say("pack", "pack", () => Pack(supply));
        yield return Say("packs", "packs", () => Told.Sum(
            $"packs to buy of {supply.Name}", Told.Plain(supply.Packs), supply.Packs, "to buy ÷ sold together, rounded up", "whole packs", Buy(workings, told, supply, paint), Pack(supply)));

        yield return Say("sessions", "sessions", () => Sessions(supply, told));
        yield return Say("clearedCans", "clearing", () => Told.Sum(
            "packages that go into clearing the nozzle", Told.Plain(supply.ClearedCans), supply.ClearedCans, "sessions × share of a package lost each time", Told.From(demand.Label.Method.Provenance),
            Sessions(supply, told), Told.Given("share of a package lost each session", Told.Percent(demand.Label.Method.SetupLoss.DecimalFractions), Told.From(demand.Label.Method.Provenance))));
        if (supply.OzonePerCanG is { } ozone)
            yield return Say("ozonePerCanG", "ozone", () => Ozone(demand.Label, told, ozone));
        if (supply.PanelGrams is { } grams)
        {
            yield return Say("panelGrams", "test panel", () => Told.Sum(
                "what one coat on a test panel should take", $"{Told.Plain(grams, 1)} g", grams, "net mass × panel area ÷ area one package covers", "weigh the can before and after; write it under test-panels in the job file",
                Told.Given("net mass", told.Format.Mass(demand.Label.NetMass!.Value), told.Said(demand.Label, "package"), demand.Label.NetMass.Value.Grams), told.Figure("test-panel"), Reach(demand.Label, told)));
        }

        yield return Say("panelM2", "panel area", () => told.Figure("test-panel"));
        for (var i = 0; i < supply.Covered.Length; i++)
        {
            var covered = supply.Covered[i];
            var place = i;
            yield return new Topic($"supplies[{supply.Product}].covered[{place}].share", [$"covered {supply.Product} {covered.Cans}", $"supplies[{at}].covered[{place}].share"], () => Told.Sum(
                $"share of the draws in which {Told.Plain(covered.Cans)} cans of {supply.Name} are enough", Told.Percent(covered.Share), covered.Share, "draws that take no more ÷ all draws", Draws,
                Told.Given("draws", Told.Plain(PaintDemand.Draws), "enough that the 10 % and 90 % marks move by about half a percent"), Spread(demand, told)));
            yield return new Topic($"supplies[{supply.Product}].covered[{place}].cans", [$"supplies[{at}].covered[{place}].cans"], () => Told.Given(
                "a number of cans around the likely one", Told.Plain(covered.Cans), "from one under the low number to the one that covers all draws, or one over the high number", covered.Cans));
        }
    }

    private static Explanation Pack(PlanSupply supply) =>
        Told.Given("packages sold together", Told.Plain(supply.Pack), supply.Pack == 1 ? "sold singly where nobody says otherwise" : Told.JobFile, supply.Pack);

    private static Explanation Cans(Workings workings, Told told, PlanSupply supply, PaintSupply paint) => Told.Sum(
        $"cans of {supply.Name} needed in all", Told.Plain(supply.Cans), supply.Cans,
        "the smallest whole number ≥ likely packages × (1 + reserve), at least the low number", "the job file's contract",
        Likely(workings, told, supply, paint.Demand),
        Told.Given("reserve", Told.Percent(workings.Job.Reserve.DecimalFractions), "the job file, or 10 % by its contract", workings.Job.Reserve.DecimalFractions),
        Low(supply, told, paint.Demand));

    private static Explanation Likely(Workings workings, Told told, PlanSupply supply, ProductDemand demand) => Told.Sum(
        $"likely packages of {supply.Name}, before reserve", Told.Plain(demand.Likely), demand.Likely,
        workings.Job.Crew.Stations > 1 ? $"sum over its coats × {Told.Plain(workings.Job.Crew.Stations)} stations, pooled before rounding up" : "sum over its coats, pooled before rounding up",
        "see each coat", [.. Coats(workings, supply).Select(coat => (Explanation?)Coat(coat, told))]);

    private static Explanation Low(PlanSupply supply, Told told, ProductDemand demand) => Told.Sum(
        "cans if all goes well", Told.Plain(supply.CansLow), supply.CansLow, "what covers 10 % of the draws, without reserve", Draws, Spread(demand, told));

    private static Explanation Spread(ProductDemand demand, Told told) => demand.Basis == DemandBasis.Covers
        ? told.Figure(demand.Label.CoversMeasured ? "covers-spread-measured" : "covers-spread")
        : Told.Given("spread of the share that is lost", Told.Percent(demand.Label.Method.LossSpread.DecimalFractions), Told.From(demand.Label.Method.Provenance));

    private static Explanation Buy(Workings workings, Told told, PlanSupply supply, PaintSupply paint) => Told.Sum(
        $"cans of {supply.Name} to buy", Told.Plain(supply.Buy), supply.Buy, "cans needed in all − cans on the shelf, rounded up, at least 0", "the job file's contract",
        Cans(workings, told, supply, paint), Told.Given("cans on the shelf, a started one as its share", Told.Plain(paint.OnShelf), Told.JobFile, paint.OnShelf));

    private static Explanation Sessions(PlanSupply supply, Told told) => Told.Sum(
        "times that it is taken up anew", Told.Plain(supply.Sessions), supply.Sessions, "coats at one station that follow each other within the gap are one session", "the plan's own steps", told.Figure("session-gap"));

    private static Explanation Ozone(Label label, Told told, double grams) => Told.Sum(
        "ozone that the vapour of one package may form outdoors", $"{Told.Plain(grams, 0)} g", grams, "net mass × Σ mass share × reactivity factor; solids and water count nothing", "40 CFR 59.505 (published, read second-hand); factors: presets, solvents",
        [
            Told.Given("net mass", label.NetMass is { } net ? told.Format.Mass(net) : "unknown", told.Said(label, "package")),
            .. label.Solvents.Where(part => part.Solvent.Ozone is not null).Select(part => (Explanation?)Told.Given(
                part.Solvent.Name, $"{Told.Percent(part.Share.DecimalFractions)} × {Told.Plain(part.Solvent.Ozone!.GramsPerGram, 2)} g/g", $"share: {told.Said(label, "solvents")}; factor: {Told.Words(part.Solvent.Ozone.Status)}")),
        ]);

    private static IEnumerable<SurfaceCoat> Coats(Workings workings, PlanSupply supply) => workings.Coats.All.Where(coat => coat.Product == supply.Product);

    private static string Currency(Job job) => job.Prices?.Currency ?? JobDefaults.Currency;
}
