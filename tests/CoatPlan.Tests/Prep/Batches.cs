using CoatPlan.Jobs;
using CoatPlan.Prep;
using UnitsNet;

namespace CoatPlan.Tests.Prep;

public class Batches
{
    private static readonly Sequence Three = PrepJob.Sequence(
        PrepJob.Surface("Left fender", condition: ["light rust"]) with { Count = 2 },
        PrepJob.Surface("Right fender", condition: ["light rust"]),
        PrepJob.Surface("Firewall", finish: "factory paint", system: PrepJob.EtchSpotsAndEnamel, stays: true));

    [Fact]
    public void Surfaces_of_one_system_in_one_place_are_a_group()
    {
        Three.Groups.Select(group => group.Id).ShouldBe([PrepJob.EtchAndEnamel, PrepJob.EtchSpotsAndEnamel], ignoreOrder: true);
        Three.Groups.Single(group => group.System == PrepJob.EtchAndEnamel).Surfaces.ShouldBe(["left-fender", "right-fender"]);
    }

    [Fact]
    public void What_stays_and_what_comes_off_are_never_one_group()
    {
        var sequence = PrepJob.Sequence(PrepJob.Surface("Firewall", stays: true), PrepJob.Surface("Bracket"));

        sequence.Groups.Select(group => group.Id).ShouldBe([PrepJob.EtchAndEnamel, $"{PrepJob.EtchAndEnamel}-in-place"], ignoreOrder: true);
    }

    [Fact]
    public void A_light_colour_goes_before_a_dark_one()
    {
        var sequence = PrepJob.Sequence(
            PrepJob.Surface("Fan", system: "etch-primer-aerosol+underhood-black-aerosol"),
            PrepJob.Surface("Cover", system: "etch-primer-aerosol+aluminium-colour-aerosol"));

        sequence.Groups[0].Surfaces.ShouldBe(["cover"]);
    }

    [Fact]
    public void A_smaller_batch_has_the_work_of_its_own_surfaces()
    {
        var whole = Three.ForBatch(["left-fender", "right-fender"], "both");
        var left = Three.ForBatch(["left-fender"], "left");
        var right = Three.ForBatch(["right-fender"], "right");

        whole.Select(operation => operation.Word).ShouldBe(left.Select(operation => operation.Word));
        for (var at = 0; at < whole.Length; at++)
            whole[at].Hands.ShouldBe(left[at].Hands + right[at].Hands);
    }

    [Fact]
    public void Work_by_surface_sums_up_to_the_operation() =>
        Three.Operations.Where(operation => operation.Scope == OperationScope.SurfaceGroup)
            .ShouldAllBe(operation => operation.Work.Aggregate(Duration.Zero, (sum, work) => sum + work.Hands) == operation.Hands);

    [Fact]
    public void Ids_end_with_the_batch() =>
        Three.ForBatch(["left-fender"], "morning").ShouldAllBe(operation => operation.Id.EndsWith("/morning", StringComparison.Ordinal));

    [Fact]
    public void Each_operation_of_a_batch_follows_the_one_before()
    {
        var batch = Three.ForBatch(["left-fender"], "morning");

        batch[0].After.ShouldBe([Three.WholeJob.Last(operation => operation.Stage <= 2).Id]);
        batch.Skip(1).Zip(batch, (later, earlier) => later.After.Single() == earlier.Id).ShouldAllBe(follows => follows);
    }

    [Fact]
    public void An_unknown_surface_or_none_is_a_callers_mistake()
    {
        Should.Throw<ArgumentException>(() => Three.ForBatch(["left-fender", "roof"], "x")).Message.ShouldContain("roof");
        Should.Throw<ArgumentException>(() => Three.ForBatch([], "x"));
    }

    [Fact]
    public void More_area_never_takes_less_time()
    {
        var small = PrepJob.Sequence(PrepJob.Surface(condition: ["scaly rust", "oily"]));
        var large = PrepJob.Sequence(PrepJob.Surface(condition: ["scaly rust", "oily"]) with { Area = Area.FromSquareMeters(2) });

        small.Operations.Zip(large.Operations, (one, other) => other.Hands >= one.Hands).ShouldAllBe(more => more);
        large.The("derust").Hands.ShouldBeGreaterThan(small.The("derust").Hands);
    }

    // Wire wheel on scale 32 min/m² and 3 min fixed, 1 m², flat panel at the bench, 15 % rest: (32 + 3) × 1.15 = 40.25 min.
    [Fact]
    public void Hands_on_time_is_area_and_fixed_part_with_rest() =>
        PrepJob.Sequence(PrepJob.Surface(condition: ["scaly rust"])).The("derust").Hands.ShouldBe(Duration.FromSeconds(2415));

    // The same wheel on a quarter of an old film that rust has broken: (32 × 0.25 + 3) × 1.15 = 12.65 min.
    [Fact]
    public void Rust_is_taken_off_where_it_is_and_not_all_over() =>
        PrepJob.Sequence(PrepJob.Surface(finish: "factory paint", system: PrepJob.EtchSpotsAndEnamel, condition: ["scaly rust"]) with { BareShare = Ratio.FromPercent(25) })
            .The("derust").Hands.ShouldBe(Duration.FromSeconds(759));

    // Final wipe 4.3 min/m² and 3 min fixed, 1 m²: on the vehicle, open bay, 1.4 times the bench.
    [Fact]
    public void Work_on_the_vehicle_takes_longer_than_at_the_bench()
    {
        PrepJob.Sequence(PrepJob.Surface()).The("final-wipe").Hands.ShouldBe(Duration.FromSeconds(504));
        PrepJob.Sequence(PrepJob.Surface(stays: true)).The("final-wipe").Hands.ShouldBe(Duration.FromSeconds(706));
    }

    [Fact]
    public void Masking_counts_edges_of_all_pieces()
    {
        var mask = PrepJob.Sequence(
            PrepJob.Surface(masks:
            [
                new MaskItem { What = "loom", Kind = "wiring", Edge = Length.FromFeet(6) },
                new MaskItem { What = "port", Kind = "opening" },
            ]) with { Count = 2 }).The("mask");

        mask.MaskEdge.Feet.ShouldBe(12, 1e-9);
        mask.Masked.Sum(item => item.Plugs).ShouldBe(2);
    }

    [Fact]
    public void A_surface_sprayed_in_place_with_nothing_listed_is_masked_all_around()
    {
        var mask = PrepJob.Sequence(PrepJob.Surface(stays: true)).The("mask");

        mask.MaskEdge.Meters.ShouldBe(4, 1e-9);
        mask.MaskArea.SquareMeters.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void A_missed_window_asks_for_scuff_blow_off_and_wipe()
    {
        var rework = Three.Rework(["left-fender"], "late");

        rework.Select(operation => operation.Word).ShouldBe(["scuff", "blow-off", "final-wipe", "tack"]);
        rework.Select(operation => operation.Id).ShouldBe(["rework-scuff/late", "rework-blow-off/late", "rework-final-wipe/late", "rework-tack/late"]);
    }

    [Fact]
    public void A_filler_primer_is_sanded_before_the_colour_and_an_etch_primer_is_not()
    {
        var sequence = PrepJob.Sequence(PrepJob.Surface(system: "etch-primer-aerosol+filler-primer-aerosol+lacquer-aerosol"));

        var sanding = sequence.BetweenLayers(["bracket"], "b", layer: 2);

        sanding.Select(operation => operation.Id).ShouldBe(["over-2-scuff/b", "over-2-blow-off/b", "over-2-final-wipe/b", "over-2-tack/b"]);
        sanding[0].Grits.ShouldBe(["P320"]);
        sequence.BetweenLayers(["bracket"], "b", layer: 1).ShouldBeEmpty();
        Should.Throw<ArgumentException>(() => sequence.BetweenLayers(["bracket"], "b", layer: 3));
    }

    [Fact]
    public void Two_surfaces_of_one_name_are_told_apart()
    {
        var sequence = PrepJob.Sequence(PrepJob.Surface(), PrepJob.Surface(condition: ["scaly rust"]) with { Id = "bracket-2" });

        sequence.The("derust").Why.ShouldContain("Bracket (bracket-2)");
    }

    [Fact]
    public void Masking_again_takes_as_long_as_masking()
    {
        var sequence = PrepJob.Sequence(PrepJob.Surface(stays: true));

        var remask = sequence.Remask(["bracket"], "night").ShouldHaveSingleItem();

        remask.Word.ShouldBe("remask");
        remask.Hands.ShouldBe(sequence.The("mask").Hands);
    }
}
