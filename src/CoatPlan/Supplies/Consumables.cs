using System.Globalization;
using CoatPlan.Areas;
using CoatPlan.Jobs;
using CoatPlan.Paint;
using CoatPlan.Prep;
using CoatPlan.Presets;
using Operation = CoatPlan.Prep.Operation;

namespace CoatPlan.Supplies;

/// <summary>What is used up besides paint, with what it is for.</summary>
public static class Consumables
{
    /// <summary>The consumables of a plan, in the catalogue's order.</summary>
    /// <param name="job">Stations, and what is on the shelf.</param>
    /// <param name="surfaces">Its surfaces as measured.</param>
    /// <param name="operations">What is done around the coats at one station, repeats included.</param>
    /// <param name="coats">The coats at one station.</param>
    /// <param name="sprayed">The dated coats of all stations.</param>
    /// <param name="worn">The respirator worn against their vapour; null: none. One that brings its own air uses up neither cartridges nor prefilters.</param>
    /// <param name="catalogue">How far each goes.</param>
    public static ImmutableArray<ConsumableNeed> Of(
        Job job, ImmutableArray<MeasuredSurface> surfaces, ImmutableArray<Operation> operations, Coats coats,
        ImmutableArray<SprayedCoat> sprayed, RespiratorKind? worn, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(coats);
        ArgumentNullException.ThrowIfNull(catalogue);

        var byId = surfaces.ToDictionary(surface => surface.Id, StringComparer.Ordinal);
        var stations = job.Crew.Stations;
        var far = new Dictionary<string, ConsumableReach?>(StringComparer.Ordinal);
        ConsumableUse[] uses =
        [
            .. operations.SelectMany(operation => ByArea(operation, byId, job, far, catalogue)),
            .. operations.SelectMany(operation => ByRule(operation, byId, job, catalogue)),
            .. Spraying(coats, sprayed, stations, catalogue),
            .. Filters(coats, sprayed, worn, stations, catalogue),
        ];
        var order = catalogue.Consumables.Select((row, i) => (row.Word, i)).ToDictionary(pair => pair.Word, pair => pair.i);
        var stock = new ConsumableStock(job.Have, catalogue.Figures);
        var packs = new PackCount();
        return
        [
            .. uses.Where(use => use.Count > 0).GroupBy(use => use.Consumable.Word).OrderBy(group => order[group.Key])
                .Select(group => Need([.. group], job, stock, packs)),
        ];
    }

    /// <summary>What on the shelf or among the prices no consumable is called.</summary>
    /// <param name="job">Its shelf and its prices.</param>
    /// <param name="catalogue">The consumables.</param>
    public static ImmutableArray<Warning> Warnings(Job job, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(catalogue);
        return ConsumableStock.Unknown(job, catalogue);
    }

    private static ConsumableNeed Need(ImmutableArray<ConsumableUse> uses, Job job, ConsumableStock stock, PackCount counted)
    {
        var consumable = uses[0].Consumable;
        var apart = consumable.IsShared ? 1 : job.Crew.Stations;
        var each = WholePackages.For(uses.Sum(use => use.Count) / apart);
        var needed = each * apart;
        var shelf = stock.Take(consumable, needed);
        var amount = WholePackages.For(needed - shelf);
        var said = job.Prices?.Consumables.FirstOrDefault(price => consumable.IsCalled(price.Key));
        var pack = said?.Pack ?? consumable.Pack;
        var packs = counted.Add(said?.Key ?? consumable.Word, amount, pack);
        return new ConsumableNeed(
            consumable.Word, consumable.Title, needed, amount, consumable.Unit, pack, packs,
            amount == 0 ? 0 : (said?.Price ?? consumable.Price) * packs, Why(uses, each, apart, OnShelf(shelf, stock.All(consumable), consumable.Unit, job.Units)));
    }

    private static string Why(ImmutableArray<ConsumableUse> uses, int each, int apart, string onShelf)
    {
        var rules = uses.GroupBy(use => use.Rule).Select(same => $"{string.Join(", ", same.Select(use => use.Operation).Distinct())}: {same.Key}");
        // Stations work at the same time: six thirds of a brush are six brushes, not two.
        var byStation = apart > 1 ? string.Create(CultureInfo.InvariantCulture, $"; {each} at each of {apart} stations") : "";
        return string.Join("; ", rules) + byStation + onShelf;
    }

    /// <summary>What is taken from the shelf, and of how much where that is more.</summary>
    private static string OnShelf(double taken, double all, string unit, PrintUnits units)
    {
        if (taken <= 0)
            return "";
        var (here, there) = (UnitWords.In(taken, unit, units).Amount, UnitWords.In(all, unit, units).Amount);
        return all > taken
            ? string.Create(CultureInfo.InvariantCulture, $"; {here:0.##} of the {there:0.##} on the shelf")
            : string.Create(CultureInfo.InvariantCulture, $"; {here:0.##} on the shelf");
    }

    private static IEnumerable<ConsumableUse> ByArea(
        Operation operation, Dictionary<string, MeasuredSurface> surfaces, Job job, Dictionary<string, ConsumableReach?> far, Catalogue catalogue)
    {
        foreach (var surface in operation.Surfaces.Select(id => surfaces[id]))
        {
            var words = ConsumableChoice.For(operation, surface, catalogue);
            if (words.IsEmpty)
                continue;

            var share = ConsumableChoice.IsOnSpots(operation) ? surface.BareShare.DecimalFractions : 1;
            var area = (surface.Total.Likely * share * job.Crew.Stations).SquareMeters;
            foreach (var word in words)
            {
                if (!far.TryGetValue(word, out var reach))
                    far[word] = reach = ConsumableReach.Of(catalogue.Consumable(word), job.Units);
                if (reach is not null)
                    yield return new ConsumableUse(reach.Consumable, area / reach.SquareMetres, operation.Word, reach.Rule);
            }
        }
    }

    private static IEnumerable<ConsumableUse> ByRule(
        Operation operation, Dictionary<string, MeasuredSurface> surfaces, Job job, Catalogue catalogue)
    {
        var stations = job.Crew.Stations;
        if (operation.Word is "degrease" or "degrease-again" or "solvent-clean" or "final-wipe")
            yield return Rule("gloves-wipe", operation.Hands.TotalMinutes * stations, operation.Word, catalogue);

        if (operation.Word == "strip-down")
        {
            var parts = operation.Surfaces.Sum(id => surfaces[id].Count) * stations;
            yield return Rule("tag", parts, operation.Word, catalogue);
            yield return Rule("bag", parts, operation.Word, catalogue);
        }

        var plugs = operation.Masked.Sum(item => item.Plugs) * stations;
        if (plugs > 0)
            yield return Rule("plug", plugs, operation.Word, catalogue);
        if (operation.Word is not ("mask" or "remask"))
            yield break;

        yield return Tape(operation, plugs, job, catalogue);
        yield return Rule("masking-film", operation.MaskArea.SquareFeet * stations, operation.Word, catalogue);
    }

    /// <summary>Rolls: the taped edge with what overlaps, and a piece for each plug or bag.</summary>
    private static ConsumableUse Tape(Operation operation, int plugs, Job job, Catalogue catalogue)
    {
        var tape = catalogue.Consumable("tape");
        var length = (operation.MaskEdge * job.Crew.Stations * tape.PerAmount) + (catalogue.Figures.Length("tape-a-plug") * plugs);
        var text = job.Units == PrintUnits.Metric
            ? string.Create(CultureInfo.InvariantCulture, $"{length.Meters:0.0} m of tape")
            : string.Create(CultureInfo.InvariantCulture, $"{length.Feet:0} ft ({length.Meters:0.0} m) of tape");
        return new ConsumableUse(tape, length / catalogue.Figures.Length("tape-roll"), operation.Word, text);
    }

    private static IEnumerable<ConsumableUse> Spraying(Coats coats, ImmutableArray<SprayedCoat> sprayed, int stations, Catalogue catalogue)
    {
        yield return Rule("gloves-spray", MinutesOfSpraying(coats) * stations, "coat", catalogue);
        var brushed = coats.All.Where(coat => !coat.On.Label.Method.Sprays).Select(coat => (coat.Product, coat.Layer, coat.Coat)).Distinct().Count() * stations;
        yield return Rule("chip-brush", brushed, "coat", catalogue);
        yield return Rule("cup", brushed, "coat", catalogue);
    }

    private static IEnumerable<ConsumableUse> Filters(Coats coats, ImmutableArray<SprayedCoat> sprayed, RespiratorKind? worn, int stations, Catalogue catalogue)
    {
        var minutes = MinutesOfSpraying(coats) * stations;
        if (minutes <= 0 || worn is not { SuppliesAir: false })
            yield break;

        var days = sprayed.Select(coat => coat.Start.Date).Distinct().Count() * stations;
        yield return Rule("prefilter", days, "coat", catalogue);
        // A cartridge is never kept to the next day, so each day takes one however short.
        var hours = Math.Max(minutes / 60, days / Math.Max(catalogue.Consumable("cartridge").PerAmount, 1e-9));
        yield return Rule("cartridge", hours, "coat", catalogue);
    }

    private static double MinutesOfSpraying(Coats coats) => coats.All.Where(coat => coat.On.Label.Method.Sprays).Sum(coat => coat.Hands.TotalMinutes);

    private static ConsumableUse Rule(string word, double times, string operation, Catalogue catalogue)
    {
        var consumable = catalogue.Consumable(word);
        return new ConsumableUse(consumable, times * consumable.PerAmount, operation, consumable.Rule);
    }
}
