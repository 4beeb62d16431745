using CoatPlan.Areas;
using CoatPlan.Jobs;
using CoatPlan.Paint;
using CoatPlan.Prep;
using CoatPlan.Supplies;
using CoatPlan.Tests.Paint;
using CsCheck;
using UnitsNet;

namespace CoatPlan.Tests.Supplies;

public sealed class WhatIsUsedUp
{
    private static readonly Job Panels = PaintSamples.Job([PaintSamples.Panel(4) with { Count = 2, Conditions = ["oily", "chips"] }]);

    [Fact]
    public void Greasy_metal_takes_more_degreaser_and_cloths()
    {
        // 8 m² are 86.1 ft²: 25 ft² a quart of degreaser and 3 ft² a cloth where it is greasy, 60 and 8 where it is not.
        var greasy = Of(Panels, Operation("degrease"));
        var light = Of(PaintSamples.Job([PaintSamples.Panel(8)]), Operation("degrease"));

        greasy["degreaser, greasy soil"].Needed.ShouldBe(4);
        greasy["degreasing cloth, greasy"].Needed.ShouldBe(29);
        light["degreaser, light soil"].Needed.ShouldBe(2);
    }

    [Fact]
    public void Each_grit_of_a_featheredge_has_its_sheet()
    {
        var sheets = Of(Panels, Operation("featheredge") with { Grits = ["P180", "P240", "P320"] });

        sheets.Keys.ShouldBe(["sheet 9 x 11 in, P120-180, dry", "sheet 9 x 11 in, P240-320, dry"], ignoreOrder: true);
    }

    [Fact]
    public void No_steel_wire_goes_on_aluminium()
    {
        var aluminium = PaintSamples.Job([PaintSamples.Panel(1) with { Material = "aluminium", Finish = "bare" }]);
        var steel = PaintSamples.Job([PaintSamples.Panel(1) with { Finish = "bare" }]);

        Of(aluminium, Operation("derust")).Keys.ShouldAllBe(item => !item.Contains("wire", StringComparison.Ordinal));
        Of(steel, Operation("derust")).Keys.ShouldContain("hand wire brush");
    }

    [Fact]
    public void Tape_is_counted_by_the_edge_and_the_plugs()
    {
        // 50 m × 1.15 and 10 in for each of 8 plugs are 59.5 m; a roll has 54.9 m.
        var mask = Operation("mask") with
        {
            Masked = [new MaskedItem("panel", "edge", "wiring", "tape", Length.FromMeters(50), Area.FromSquareMeters(1), 8)],
        };

        var needs = Of(Panels, mask);

        needs["masking tape, 60 yd roll"].Needed.ShouldBe(2);
        needs["plug or bag"].Needed.ShouldBe(9);
        needs["masking film"].Needed.ShouldBe(12);
    }

    [Fact]
    public void Parts_that_come_off_take_a_tag_and_a_bag_each()
    {
        var needs = Of(Panels, Operation("strip-down"));

        needs["tag with number"].Needed.ShouldBe(2);
        needs["bag for fasteners"].Needed.ShouldBe(2);
    }

    [Fact]
    public void A_respirator_that_brings_its_own_air_uses_up_no_cartridges()
    {
        ImmutableArray<SprayedCoat> coat = [new("black", 1, 1, ["panel"], 1, Panels.Start, Panels.Start.PlusMinutes(30))];

        var needs = Needs(Panels, [], coat, PaintSamples.Coats(Panels, PaintSamples.OneSquareMetreCan), worn: "supplied-continuous");

        needs.Keys.ShouldNotContain("pair of organic-vapour cartridges");
        needs.Keys.ShouldNotContain("pair of particulate prefilters");
        needs.Keys.ShouldContain("nitrile gloves, spraying");
    }

    [Fact]
    public void Every_day_of_spraying_takes_new_cartridges_and_a_brush_takes_none()
    {
        var start = Panels.Start;
        ImmutableArray<SprayedCoat> twoDays =
        [
            new("black", 1, 1, ["panel"], 1, start, start.PlusMinutes(30)),
            new("black", 1, 2, ["panel"], 1, start.PlusHours(24), start.PlusHours(24).PlusMinutes(30)),
        ];
        var brushed = PaintSamples.OneSquareMetreCan with { Method = PaintSamples.Catalogue.Method("brush") };

        Of(Panels, twoDays, PaintSamples.OneSquareMetreCan)["pair of organic-vapour cartridges"].Needed.ShouldBe(2);
        Of(Panels, twoDays, brushed).Keys.ShouldNotContain("pair of organic-vapour cartridges");
        Of(Panels, twoDays, brushed)["brush"].Needed.ShouldBe(2);
    }

    [Fact]
    public void What_is_on_the_shelf_is_taken_off_and_said()
    {
        var job = Panels with { Have = SupplySamples.Have("tag", 1.0, product: false) };

        var tag = Of(job, Operation("strip-down"))["tag with number"];

        (tag.Needed, tag.Amount).ShouldBe((2, 1));
        tag.Why.ShouldEndWith("; 1 on the shelf");
    }

    [Fact]
    public void Of_more_on_the_shelf_it_is_said_how_many_are_taken()
    {
        var job = Panels with { Have = SupplySamples.Have("tag", 5.0, product: false) };

        var tag = Of(job, Operation("strip-down"))["tag with number"];

        (tag.Needed, tag.Amount).ShouldBe((2, 0));
        tag.Why.ShouldEndWith("; 2 of the 5 on the shelf");
    }

    [Fact]
    public void Packs_are_bought_whole_and_priced_as_the_job_or_a_preset_says()
    {
        // 12 stations of 2 parts are 24 tags; boxes of 10 at 3.20 are 3 boxes, 9.60.
        var job = Panels with
        {
            Crew = Panels.Crew with { Stations = 12 },
            Prices = new Prices { Consumables = [new ConsumablePrice { Key = "tag", Price = 3.20m, Pack = 10 }] },
        };

        var needs = Of(job, Operation("strip-down"));

        var tag = needs["tag with number"];
        (tag.Needed, tag.Pack, tag.Packs, tag.Price).ShouldBe((24, 10, 3, 9.60m));
        needs["bag for fasteners"].Price.ShouldBeNull();
        Of(job with { Have = SupplySamples.Have("tag", 24, product: false) }, Operation("strip-down"))["tag with number"].Price.ShouldBe(0);
    }

    [Fact]
    public void What_each_station_holds_in_the_hand_is_not_shared_and_what_is_poured_is()
    {
        // A brush does 100 ft² and a station has 21.5: six stations at it at once take six. A quart of cleaner does 160 ft²: one serves all six.
        var job = PaintSamples.Job([PaintSamples.Panel(2) with { Finish = "bare", Conditions = ["light rust"] }]);
        var six = job with { Crew = job.Crew with { Stations = 6 } };

        var brush = Of(six, Operation("derust"))["hand wire brush"];

        brush.Needed.ShouldBe(6);
        brush.Why.ShouldContain("1 at each of 6 stations");
        Of(job, Operation("derust"))["hand wire brush"].Why.ShouldNotContain("station");
        Of(job with { Crew = job.Crew with { Stations = 6 } }, Operation("solvent-clean"))["wax and grease remover"].Needed.ShouldBe(1);
        Of(six with { Have = SupplySamples.Have("wire brush", 4, product: false) }, Operation("derust"))["hand wire brush"].Amount.ShouldBe(2);
    }

    [Theory]
    [InlineData(1, "brush", "brush")]
    [InlineData(6, "brush", "brushes")]
    [InlineData(7, "cloth", "cloths")]
    [InlineData(0, "pair", "pairs")]
    [InlineData(3, "qt", "qt")]
    [InlineData(12, "ft2", "ft²")]
    [InlineData(2, "pieces", "pieces")]
    public void Units_stand_in_the_plural_behind_more_than_one(double amount, string unit, string written) => UnitWords.Behind(amount, unit).ShouldBe(written);

    [Fact]
    public void One_pack_serves_all_that_is_bought_under_one_name()
    {
        // 29 greasy cloths and 11 for the second clean: 40 of a pack of 50.
        var job = Panels with { Prices = new Prices { Consumables = [new ConsumablePrice { Key = "shop cloth", Price = 22, Pack = 50 }] } };

        var needs = Of(job, Operation("degrease"), Operation("degrease-again"));

        (needs["degreasing cloth, greasy"].Packs, needs["degreasing cloth, greasy"].Price).ShouldBe((1, 22m));
        (needs["degreasing cloth, after the first clean"].Packs, needs["degreasing cloth, after the first clean"].Price).ShouldBe((0, 0m));
    }

    [Fact]
    public void A_roll_on_the_shelf_is_counted_by_its_length_and_by_what_people_call_it()
    {
        var mask = Operation("mask") with { Masked = [new MaskedItem("panel", "edge", "wiring", "tape", Length.FromFeet(100), Area.Zero, 0)] };
        var shelf = Panels with { Have = [new HaveEntry { Key = "Masking tape", Amount = new Amount { Length = Length.FromFeet(180) } }] };

        Of(Panels, mask)["masking tape, 60 yd roll"].Amount.ShouldBe(1);
        Of(shelf, mask)["masking tape, 60 yd roll"].Amount.ShouldBe(0);
    }

    [Fact]
    public void What_one_need_leaves_of_a_shelf_is_there_for_the_next_of_the_same_name()
    {
        // 8 m² take 29 greasy cloths, then 11 cloths for the second clean.
        var shelf = Panels with { Have = SupplySamples.Have("shop cloths", 32.0, product: false) };

        var needs = Of(shelf, Operation("degrease"), Operation("degrease-again"));

        needs["degreasing cloth, greasy"].Amount.ShouldBe(0);
        needs["degreasing cloth, after the first clean"].Amount.ShouldBe(11 - 3);
    }

    [Fact]
    public void What_on_the_shelf_nobody_knows_is_said_not_passed_over()
    {
        var job = Panels with
        {
            Have = [.. SupplySamples.Have("tackcloth", 2, product: false), new HaveEntry { Key = "tag", Amount = new Amount { Area = Area.FromSquareMeters(1) } }],
            Prices = new Prices { Consumables = [new ConsumablePrice { Key = "gold leaf", Price = 1 }] },
        };

        var warnings = Consumables.Warnings(job, PaintSamples.Catalogue);

        warnings.Select(warning => warning.Code).ShouldBe(["data-missing", "data-missing", "data-missing"]);
        warnings[0].Text.ShouldContain("Did you mean tack-cloth?");
        warnings[1].Text.ShouldContain("unit");
        warnings[2].Text.ShouldContain("gold leaf");
        Consumables.Warnings(Panels with { Have = SupplySamples.Have("tack cloth", 1, product: false) }, PaintSamples.Catalogue).ShouldBeEmpty();
    }

    [Fact]
    public void More_on_the_shelf_never_raises_what_is_bought() =>
        Gen.Select(Gen.Double[0, 40], Gen.Double[0, 40], Gen.Int[1, 20]).Sample((have, more, pack) =>
        {
            var job = Panels with { Prices = new Prices { Consumables = [new ConsumablePrice { Key = "shop cloth", Price = 2.5m, Pack = pack }] } };
            return Bill(have + more) <= Bill(have);

            decimal Bill(double cloths) => Of(job with { Have = SupplySamples.Have("shop cloth", cloths, product: false) }, Operation("degrease"), Operation("degrease-again"))
                .Values.Sum(need => need.Price ?? 0);
        }, iter: 60);

    [Fact]
    public void Each_station_uses_its_own()
    {
        var stations = Panels with { Crew = Panels.Crew with { Stations = 6 } };

        Of(stations, Operation("strip-down"))["tag with number"].Needed.ShouldBe(12);
    }

    private static Operation Operation(string word) => new()
    {
        Id = word,
        Word = word,
        Stage = 5,
        Order = 1,
        Title = word,
        Scope = OperationScope.SurfaceGroup,
        Surfaces = ["panel"],
        Hands = Duration.FromMinutes(10),
        MakesDust = false,
        Breakable = true,
        HotWork = false,
        Why = "a test",
        After = [],
    };

    private static Dictionary<string, ConsumableNeed> Of(Job job, params ImmutableArray<Operation> operations) =>
        Needs(job, operations, [], new Coats { Layers = [], All = [], Warnings = [] });

    private static Dictionary<string, ConsumableNeed> Of(Job job, ImmutableArray<SprayedCoat> sprayed, CoatPlan.Presets.Label label) =>
        Needs(job, [], sprayed, PaintSamples.Coats(job, label));

    private static Dictionary<string, ConsumableNeed> Needs(
        Job job, ImmutableArray<Operation> operations, ImmutableArray<SprayedCoat> sprayed, Coats coats, string worn = "air-purifying") =>
        Consumables.Of(job, SurfaceAreas.Measure(job, PaintSamples.Catalogue), operations, coats, sprayed, PaintSamples.Catalogue.Respirator(worn), PaintSamples.Catalogue)
            .ToDictionary(need => need.Item);
}
