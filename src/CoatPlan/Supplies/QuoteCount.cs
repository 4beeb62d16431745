using CoatPlan.Jobs;
using CoatPlan.Paint;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Supplies;

/// <summary>What a job costs a customer.</summary>
public static class QuoteCount
{
    /// <summary>The quote of a job; null where it names no price of labour.</summary>
    /// <remarks>
    /// Low and high take all hands-on times <c>hands-spread</c> shorter or longer, and the low or high number of cans; what is used up besides paint stays
    /// as counted. Work for the job as a whole is shared over the surfaces by their own, paint by what is sprayed on each, consumables by labour.
    /// </remarks>
    /// <param name="job">Prices and surfaces.</param>
    /// <param name="work">The hands-on work; a surface may come more than once.</param>
    /// <param name="supplies">What is bought of paint.</param>
    /// <param name="consumables">What is bought besides.</param>
    /// <param name="coats">What goes on which surface.</param>
    /// <param name="figures">The spread of hands-on times.</param>
    public static Quote? Of(
        Job job, ImmutableArray<WorkHours> work, ImmutableArray<PaintSupply> supplies, ImmutableArray<ConsumableNeed> consumables, Coats coats, Figures figures)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(coats);
        ArgumentNullException.ThrowIfNull(figures);
        if (job.Prices is not { LabourPerHour: { } perHour } prices)
            return null;

        var hours = work.Aggregate(Duration.Zero, (sum, one) => sum + one.Hands).TotalHours;
        var spread = figures.Share("hands-spread").DecimalFractions;
        var paint = MinorUnits.Round(Price(supplies, supply => supply.Demand.Cans), prices.Currency);
        var besides = MinorUnits.Round(consumables.Sum(need => need.Price ?? 0), prices.Currency);
        var sums = Sums(perHour, hours, paint + besides, prices);
        return new Quote
        {
            Currency = prices.Currency,
            PerHour = perHour,
            LabourHours = hours,
            Hours = [.. work.GroupBy(one => one.Operation).Select(group => new OperationHours(group.Key, group.Sum(one => one.Hands.TotalHours)))],
            Labour = sums.Labour,
            Paint = paint,
            Consumables = besides,
            Materials = sums.Materials,
            Markup = sums.Markup,
            Tax = sums.Tax,
            Total = sums.Total,
            Low = Sums(perHour, hours * (1 - spread), Price(supplies, supply => supply.Demand.CansLow) + besides, prices).Total,
            High = Sums(perHour, hours * (1 + spread), Price(supplies, supply => supply.Demand.CansHigh) + besides, prices).Total,
            Lines = Lines(job, work, supplies, paint, besides, coats, sums, prices),
            NotIncluded = NotIncluded(supplies, consumables),
        };
    }

    /// <summary>The sums of a quote without its lines, each in whole minor units.</summary>
    private static QuoteLine Sums(decimal perHour, double hours, decimal materials, Prices prices)
    {
        var labour = Round((decimal)hours * perHour);
        var bought = Round(materials);
        var markup = Round(bought * (decimal)prices.Markup.DecimalFractions);
        var taxed = bought + markup + (prices.TaxOn == TaxBase.All ? labour : 0);
        return new QuoteLine("", labour, bought, markup, Round(taxed * (decimal)prices.Tax.DecimalFractions));

        decimal Round(decimal money) => MinorUnits.Round(money, prices.Currency);
    }

    /// <summary>What the cans of one way of counting cost, what is on the shelf taken off; what has no price counts nothing and is named.</summary>
    private static decimal Price(ImmutableArray<PaintSupply> supplies, Func<PaintSupply, int> cans) =>
        supplies.Sum(supply => PaintSupplies.Price(supply.Demand.Label, PaintSupplies.ToBuy(cans(supply), supply.OnShelf)) ?? 0);

    private static ImmutableArray<QuoteLine> Lines(
        Job job, ImmutableArray<WorkHours> work, ImmutableArray<PaintSupply> supplies, decimal paint, decimal besides, Coats coats, QuoteLine sums, Prices prices)
    {
        var bySurface = work.ToLookup(one => one.Surface, StringComparer.Ordinal);
        var minutes = job.Surfaces.Select(surface => bySurface[surface.Id].Sum(one => one.Hands.TotalMinutes)).ToImmutableArray();
        var sprayed = Sprayed(job, supplies, coats);
        var labour = MinorUnits.Share(sums.Labour, minutes, prices.Currency);
        var ofPaint = MinorUnits.Share(paint, sprayed, prices.Currency);
        var ofBesides = MinorUnits.Share(besides, minutes, prices.Currency);
        var materials = ofPaint.Zip(ofBesides, (one, other) => one + other).ToImmutableArray();
        var markup = MinorUnits.Share(sums.Markup, [.. materials.Select(money => (double)money)], prices.Currency);
        var tax = MinorUnits.Share(
            sums.Tax,
            [.. materials.Select((money, i) => (double)(money + markup[i] + (prices.TaxOn == TaxBase.All ? labour[i] : 0)))],
            prices.Currency);
        return [.. job.Surfaces.Select((surface, i) => new QuoteLine(surface.Id, labour[i], materials[i], markup[i], tax[i]))];
    }

    /// <summary>Each surface's part of what the products cost, by its part of what is sprayed of each.</summary>
    private static ImmutableArray<double> Sprayed(Job job, ImmutableArray<PaintSupply> supplies, Coats coats)
    {
        var ofProduct = coats.All.ToLookup(coat => coat.Product, StringComparer.Ordinal);
        var costs = new double[job.Surfaces.Length];
        foreach (var supply in supplies)
        {
            var own = ofProduct[supply.Demand.Label.Key].ToLookup(coat => coat.Surface, coat => coat.Packages, StringComparer.Ordinal);
            var all = ofProduct[supply.Demand.Label.Key].Sum(coat => coat.Packages);
            for (var i = 0; all > 0 && i < costs.Length; i++)
                costs[i] += (double)(supply.Price ?? 0) * own[job.Surfaces[i].Id].Sum() / all;
        }

        return [.. costs];
    }

    private static ImmutableArray<string> NotIncluded(ImmutableArray<PaintSupply> supplies, ImmutableArray<ConsumableNeed> consumables)
    {
        var unknown = supplies.Where(supply => supply.Price is null).Select(supply => supply.Demand.Label.Name).ToArray();
        var besides = consumables.Where(need => need.Price is null).Select(need => need.Item).ToArray();
        return
        [
            .. unknown.Length > 0 ? [$"Paint without a price in the job file: {string.Join(", ", unknown)}."] : ImmutableArray<string>.Empty,
            .. Besides(besides, consumables.Length),
            "Parts, fluids, fasteners, and repairs that the checks or the stripped parts turn out to need.",
            "Disposal fees.",
        ];
    }

    private static ImmutableArray<string> Besides(string[] unknown, int all)
    {
        if (unknown.Length == 0)
            return [];
        return unknown.Length == all
            ? ["What is used up besides paint: none of it has a price in the job file."]
            : [$"Used up besides paint and without a price in the job file: {string.Join("; ", unknown)}."];
    }
}
