using CoatPlan.Jobs;
using CoatPlan.Prep;

namespace CoatPlan.Tests.Prep;

public class StagesOfAJob
{
    /// <summary>The job may end a week after the last coat: nothing that a day soaked waits for it.</summary>
    [Fact]
    public void Rags_are_put_away_on_the_day_that_soaked_them_and_not_at_the_end_of_the_job()
    {
        var sequence = PrepJob.Sequence(PrepJob.Surface());

        foreach (var word in new[] { "solvent-clean", "final-wipe" })
            sequence.The(word).Why.ShouldContain("at the end of the day");
        sequence.The("put-away").Why.ShouldContain("went at the end of each");
        sequence.The("put-away").Why.ShouldNotContain("same day");
    }

    private static readonly Sequence Bay = PrepJob.Sequence(
        PrepJob.Surface("Inner fender", finish: "factory paint", system: PrepJob.EtchSpotsAndEnamel, stays: true, condition: ["oily", "chips"],
            masks: [new MaskItem { What = "wiring loom", Kind = "wiring", Edge = UnitsNet.Length.FromFeet(6) }]),
        PrepJob.Surface("Battery tray", condition: ["scaly rust"]));

    [Fact]
    public void Operations_come_stage_by_stage_and_in_order_inside_it() =>
        Bay.Operations.Select(operation => (operation.Stage, operation.Order)).ShouldBeInOrder();

    [Fact]
    public void Ids_are_unique_and_the_same_for_the_same_job()
    {
        var again = PrepJob.Sequence(PrepJob.Of([.. Surfaces(Bay)]));

        Bay.Operations.Select(operation => operation.Id).ShouldBeUnique();
        again.Operations.Select(operation => operation.Id).ShouldBe(Bay.Operations.Select(operation => operation.Id));
        again.Operations.Select(operation => operation.Why).ShouldBe(Bay.Operations.Select(operation => operation.Why));
    }

    [Fact]
    public void Every_operation_says_why_and_how_well_that_is_vouched_for() =>
        Bay.Operations.ShouldAllBe(operation => operation.Why.EndsWith(')') && operation.Why.Contains('('));

    [Fact]
    public void Every_operation_comes_after_known_ones_only()
    {
        var ids = Bay.Operations.Select(operation => operation.Id).ToHashSet();

        Bay.Operations.SelectMany(operation => operation.After).ShouldAllBe(id => ids.Contains(id));
    }

    [Fact]
    public void No_operation_comes_before_one_it_must_follow()
    {
        var at = Bay.Operations.Select((operation, index) => (operation.Id, index)).ToDictionary(pair => pair.Id, pair => pair.index);

        Bay.Operations.ShouldAllBe(operation => operation.After.All(id => at[id] < at[operation.Id]));
    }

    [Fact]
    public void Every_operation_has_a_word_of_the_contract() =>
        Bay.Words().ShouldAllBe(word => Vocabulary.Contract.Operations.Contains(word));

    [Fact]
    public void An_engine_bay_gets_its_whole_job()
    {
        string[] expected =
        [
            "photograph", "disconnect", "open-hood", "cover", "degrease", "wash", "strip-down", "degrease-again", "solvent-clean", "protect",
            "derust", "featheredge", "scuff", "blow-off", "mask", "final-wipe", "tack", "unmask", "refit", "recheck", "put-away",
        ];

        Bay.Words().Distinct().ShouldBe(expected);
    }

    [Fact]
    public void A_part_that_stays_is_neither_stripped_nor_refitted()
    {
        Bay.The("strip-down").Surfaces.ShouldBe(["battery-tray"]);
        Bay.The("refit").Surfaces.ShouldBe(["battery-tray"]);
    }

    [Fact]
    public void Nothing_dusty_begins_before_all_parts_are_off() =>
        Bay.Operations.Where(operation => operation.Word == "solvent-clean").ShouldAllBe(operation => operation.After.Contains(Bay.The("strip-down").Id));

    [Fact]
    public void Everything_is_put_away_after_the_last_refit() =>
        Bay.The("put-away").After.ShouldContain(Bay.The("refit").Id);

    [Fact]
    public void A_removed_part_alone_needs_no_hood_but_is_tagged_and_refitted()
    {
        var words = PrepJob.Sequence(PrepJob.Surface("Battery tray")).Words();

        words.ShouldNotContain("open-hood");
        words.ShouldNotContain("cover");
        words.ShouldContain("disconnect");
        words.ShouldContain("strip-down");
        words.ShouldContain("refit");
    }

    [Fact]
    public void A_class_on_bench_panels_needs_no_vehicle_work_and_is_told_why()
    {
        var job = PrepJob.Of(PrepJob.Surface("Panel A")) is var one ? one with { Crew = one.Crew with { Stations = 6 } } : null!;

        var sequence = PrepJob.Sequence(job);

        sequence.Words().ShouldBe(["photograph", "solvent-clean", "scuff", "blow-off", "final-wipe", "tack", "put-away"]);
        sequence.The("photograph").Why.ShouldContain("no battery, hood or engine step");
    }

    [Fact]
    public void Checks_are_steps_only_where_their_readings_are_given()
    {
        var job = PrepJob.Of(PrepJob.Surface(stays: true));
        var checks = new Checks
        {
            CylinderPressures = [UnitsNet.Pressure.FromPoundsForcePerSquareInch(132), UnitsNet.Pressure.FromPoundsForcePerSquareInch(134)],
            PressureTest = new PressureTest
            {
                Cap = UnitsNet.Pressure.FromPoundsForcePerSquareInch(15),
                Start = UnitsNet.Pressure.FromPoundsForcePerSquareInch(15),
                End = UnitsNet.Pressure.FromPoundsForcePerSquareInch(15),
            },
        };

        PrepJob.Sequence(job).Words().ShouldNotContain("check-cylinders");
        PrepJob.Sequence(job with { Checks = checks }).Words().ShouldContain("check-cylinders");
        PrepJob.Sequence(job with { Checks = checks }).Words().ShouldContain("check-pressure");
    }

    [Fact]
    public void Openings_are_capped_before_anything_dusty()
    {
        var sequence = PrepJob.Sequence(PrepJob.Surface(
            "Intake", "cast aluminium", condition: ["white corrosion"], masks: [new MaskItem { What = "ports", Kind = "opening" }]));

        var words = sequence.Words();

        Array.IndexOf(words, "cap-ports").ShouldBeInRange(0, sequence.Operations.ToList().FindIndex(operation => operation.MakesDust) - 1);
    }

    private static JobSurface[] Surfaces(Sequence _) =>
    [
        PrepJob.Surface("Inner fender", finish: "factory paint", system: PrepJob.EtchSpotsAndEnamel, stays: true, condition: ["oily", "chips"],
            masks: [new MaskItem { What = "wiring loom", Kind = "wiring", Edge = UnitsNet.Length.FromFeet(6) }]),
        PrepJob.Surface("Battery tray", condition: ["scaly rust"]),
    ];
}
