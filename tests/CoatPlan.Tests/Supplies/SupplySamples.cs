using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Supplies;
using CoatPlan.Tests.Paint;
using UnitsNet;

namespace CoatPlan.Tests.Supplies;

/// <summary>Jobs with prices and shelves that say only what a test is about.</summary>
internal static class SupplySamples
{
    public static Label Can(decimal? price = 9.50m, int pack = 1) => PaintSamples.OneSquareMetreCan with { Price = price, Pack = pack };

    public static Prices Prices { get; } = new() { LabourPerHour = 85, Markup = Ratio.FromPercent(25), Tax = Ratio.FromPercent(8.25) };

    public static ImmutableArray<HaveEntry> Have(string key, double count, bool product = true) =>
        [new HaveEntry { Key = key, IsProduct = product, Amount = new Amount { Count = count } }];

    public static ImmutableArray<PaintSupply> Supplies(Job job, Label? can = null) =>
        PaintSupplies.Of([PaintSamples.Demand(job, can ?? Can())], job.Have);

    public static Quote? Quote(Job job, ImmutableArray<WorkHours> work, Label? can = null, params ImmutableArray<ConsumableNeed> consumables) => QuoteCount.Of(
        job, work, Supplies(job, can), consumables.IsDefault ? [] : consumables, PaintSamples.Coats(job, can ?? Can()), PaintSamples.Catalogue.Figures);

    public static ConsumableNeed Need(string item, decimal? price) => new(item, item, 1, 1, "piece", 1, 1, price, "a test");
}
