using CoatPlan.Jobs;
using CoatPlan.Tests.Paint;
using CsCheck;

namespace CoatPlan.Tests.Supplies;

public sealed class CansBought
{
    // Two coats on 2 m² with cans of 1 m² and 10 % reserve: 5 cans.
    private static readonly Job FiveCans = PaintSamples.Job([PaintSamples.Panel(2)]);

    [Fact]
    public void What_is_on_the_shelf_is_not_bought()
    {
        Bought(FiveCans).Buy.ShouldBe(5);
        Bought(FiveCans with { Have = SupplySamples.Have("black", 2) }).Buy.ShouldBe(3);
        Bought(FiveCans with { Have = SupplySamples.Have("black", 1.5) }).Buy.ShouldBe(4);
        Bought(FiveCans with { Have = SupplySamples.Have("black", 9) }).Buy.ShouldBe(0);
        Bought(FiveCans with { Have = SupplySamples.Have("black", 9) }).Price.ShouldBe(0);
        Bought(FiveCans with { Have = SupplySamples.Have("black", 3, product: false) }).Buy.ShouldBe(5);
    }

    [Fact]
    public void A_weighed_can_counts_as_its_share()
    {
        var half = SupplySamples.Can().NetMass!.Value / 2;
        var shelf = new HaveEntry { Key = "black", IsProduct = true, Amount = new Amount { Mass = half } };

        Bought(FiveCans with { Have = [shelf] }).OnShelf.ShouldBe(0.5, 1e-12);
    }

    [Fact]
    public void Paint_on_the_shelf_that_cannot_be_counted_is_said()
    {
        var unknown = SupplySamples.Can() with { NetMass = null, NetVolume = null };
        ImmutableArray<HaveEntry> shelf = [new HaveEntry { Key = "black", IsProduct = true, Amount = new Amount { Mass = UnitsNet.Mass.FromGrams(100) } }];

        CoatPlan.Supplies.PaintSupplies.Warnings(shelf, new CoatPlan.Presets.Labels([unknown])).ShouldHaveSingleItem().Code.ShouldBe("data-missing");
        CoatPlan.Supplies.PaintSupplies.Warnings(shelf, new CoatPlan.Presets.Labels([SupplySamples.Can()])).ShouldBeEmpty();
    }

    [Fact]
    public void Packs_are_bought_whole()
    {
        Bought(FiveCans).Price.ShouldBe(47.50m);
        SupplySamples.Supplies(FiveCans, SupplySamples.Can(pack: 6))[0].Price.ShouldBe(57.00m);
        SupplySamples.Supplies(FiveCans, SupplySamples.Can(pack: 6))[0].Buy.ShouldBe(5);
    }

    [Fact]
    public void A_can_of_unknown_price_has_no_price_unless_none_is_bought()
    {
        SupplySamples.Supplies(FiveCans, SupplySamples.Can(price: null))[0].Price.ShouldBeNull();
        SupplySamples.Supplies(FiveCans with { Have = SupplySamples.Have("black", 5) }, SupplySamples.Can(price: null))[0].Price.ShouldBe(0);
    }

    [Fact]
    public void More_on_the_shelf_never_raises_the_bill() =>
        Gen.Select(Gen.Double[0, 8], Gen.Double[0, 4], Gen.Int[1, 6]).Sample((have, more, pack) =>
        {
            var little = SupplySamples.Supplies(FiveCans with { Have = SupplySamples.Have("black", have) }, SupplySamples.Can(pack: pack))[0];
            var much = SupplySamples.Supplies(FiveCans with { Have = SupplySamples.Have("black", have + more) }, SupplySamples.Can(pack: pack))[0];
            return much.Buy <= little.Buy && much.Price <= little.Price;
        }, iter: 60);

    private static CoatPlan.Supplies.PaintSupply Bought(Job job) => SupplySamples.Supplies(job)[0];
}
