using CoatPlan.Jobs;
using CoatPlan.Paint;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Supplies;

/// <summary>What a job costs a customer.</summary>
public static class QuoteCount
{
    /// <summary>The quote of a job; null where it names no price of labour.</summary>
    /// <remarks>Low and high take all hands-on times <c>hands-spread</c> shorter or longer, and the low or high number of cans.</remarks>
    /// <param name="job">Prices and surfaces.</param>
    /// <param name="work">Work that goes with each surface; a surface may come more than once.</param>
    /// <param name="common">Person time for the job as a whole, shared over the surfaces by their own.</param>
    /// <param name="supplies">What is bought.</param>
    /// <param name="coats">What goes on which surface.</param>
    /// <param name="figures">The spread of hands-on times.</param>
    public static Quote? Of(
        Job job, ImmutableArray<SurfaceHours> work, Duration common, ImmutableArray<PaintSupply> supplies, Coats coats, Figures figures)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(coats);
        ArgumentNullException.ThrowIfNull(figures);
        if (job.Prices is not { LabourPerHour: { } perHour } prices)
            return null;

        var hours = (work.Aggregate(common, (sum, one) => sum + one.Hands)).TotalHours;
        var spread = figures.Share("hands-spread").DecimalFractions;
        var sums = Sums(perHour, hours, Materials(supplies, supply => supply.Demand.Cans), prices);
        return new Quote
        {
            Currency = prices.Currency,
            LabourHours = hours,
            Labour = sums.Labour,
            Materials = sums.Materials,
            Markup = sums.Markup,
            Tax = sums.Tax,
            Total = sums.Total,
            Low = Sums(perHour, hours * (1 - spread), Materials(supplies, supply => supply.Demand.CansLow), prices).Total,
            High = Sums(perHour, hours * (1 + spread), Materials(supplies, supply => supply.Demand.CansHigh), prices).Total,
            Lines = Lines(job, work, supplies, coats, sums, prices),
            NotIncluded = NotIncluded(supplies),
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
    private static decimal Materials(ImmutableArray<PaintSupply> supplies, Func<PaintSupply, int> cans) =>
        supplies.Sum(supply => PaintSupplies.Price(supply.Demand.Label, PaintSupplies.ToBuy(cans(supply), supply.OnShelf)) ?? 0);

    private static ImmutableArray<QuoteLine> Lines(
        Job job, ImmutableArray<SurfaceHours> work, ImmutableArray<PaintSupply> supplies, Coats coats, QuoteLine sums, Prices prices)
    {
        var minutes = job.Surfaces.Select(surface => work.Where(one => one.Surface == surface.Id).Sum(one => one.Hands.TotalMinutes)).ToImmutableArray();
        var paint = job.Surfaces.Select(surface => supplies.Sum(supply => Cost(supply, surface.Id, coats))).ToImmutableArray();
        var labour = MinorUnits.Share(sums.Labour, minutes, prices.Currency);
        var materials = MinorUnits.Share(sums.Materials, paint, prices.Currency);
        var markup = MinorUnits.Share(sums.Markup, [.. materials.Select(money => (double)money)], prices.Currency);
        var tax = MinorUnits.Share(
            sums.Tax,
            [.. materials.Select((money, i) => (double)(money + markup[i] + (prices.TaxOn == TaxBase.All ? labour[i] : 0)))],
            prices.Currency);
        return [.. job.Surfaces.Select((surface, i) => new QuoteLine(surface.Id, labour[i], materials[i], markup[i], tax[i]))];
    }

    /// <summary>A surface's part of what a product costs, by its part of what is sprayed.</summary>
    private static double Cost(PaintSupply supply, string surface, Coats coats)
    {
        var own = coats.All.Where(coat => coat.Product == supply.Demand.Label.Key).ToArray();
        var all = own.Sum(coat => coat.Packages);
        return all > 0 ? (double)(supply.Price ?? 0) * own.Where(coat => coat.Surface == surface).Sum(coat => coat.Packages) / all : 0;
    }

    private static ImmutableArray<string> NotIncluded(ImmutableArray<PaintSupply> supplies)
    {
        var unknown = supplies.Where(supply => supply.Price is null).Select(supply => supply.Demand.Label.Name).ToArray();
        return
        [
            .. unknown.Length > 0 ? [$"Paint without a price in the job file: {string.Join(", ", unknown)}."] : ImmutableArray<string>.Empty,
            "What is used up besides paint.",
            "Parts, fluids, fasteners, and repairs that the checks or the stripped parts turn out to need.",
            "Disposal fees.",
        ];
    }
}
