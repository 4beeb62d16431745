using CoatPlan.Plans;

namespace CoatPlan.Tests.Plans;

/// <summary>What a step that was done adds to the work and takes from it: work, not the batches that it is done in.</summary>
public class WhatAStepChanged
{
    private static readonly PlanStep s_scuff = SamplePlan.Weekend().Steps.Single(step => step.Id == "featheredge") with { Kind = "scuff" };

    [Fact]
    public void Batches_that_go_together_are_the_same_work()
    {
        var apart = Of(Step("scuff/a", "Scuff: Inner fender", "inner-fender"), Step("scuff/b", "Scuff: Battery tray", "battery-tray"));
        var together = Of(Step("scuff/c", "Scuff: Inner fender and Battery tray", "inner-fender", "battery-tray"));

        var change = Between(apart, together);

        change.Added.ShouldBeEmpty();
        change.Dropped.ShouldBeEmpty();
    }

    [Fact]
    public void What_is_new_in_a_larger_batch_is_named()
    {
        var one = Of(Step("scuff/a", "Scuff: Inner fender", "inner-fender"));
        var both = Of(Step("scuff/c", "Scuff: Inner fender and Battery tray", "inner-fender", "battery-tray"));

        Between(one, both).Added.ShouldBe(["Scuff: Inner fender and Battery tray, on Battery tray"]);
        Between(both, one).Dropped.ShouldBe(["Scuff: Inner fender and Battery tray, on Battery tray"]);
    }

    [Fact]
    public void Work_that_is_done_once_more_is_more_work()
    {
        var once = Of(Step("scuff/a", "Scuff: Inner fender", "inner-fender"));
        var twice = Of(Step("scuff/a", "Scuff: Inner fender", "inner-fender"), Step("scuff/a/2", "Scuff once more: Inner fender", "inner-fender"));

        Between(once, twice).Added.ShouldBe(["Scuff once more: Inner fender"]);
    }

    [Fact]
    public void The_station_is_said()
    {
        var none = Of(Step("mask@2", "Mask: Inner fender", "inner-fender") with { Station = 2, Kind = "mask" });
        var more = Of(none.Steps[0], Step("scuff/a@2", "Scuff: Inner fender", "inner-fender") with { Station = 2 });

        var change = PlanChange.Between(none.Steps[0], none, more);

        change.Added.ShouldBe(["Scuff: Inner fender, station 2"]);
        change.Stations.ShouldBe(2);
        PlanChange.Between(s_scuff, none, more).Stations.ShouldBeNull();
    }

    private static PlanChange Between(Plan before, Plan after) => PlanChange.Between(s_scuff, before, after);

    private static Plan Of(params ImmutableArray<PlanStep> steps) => SamplePlan.Weekend() with { Steps = steps };

    private static PlanStep Step(string id, string title, params ImmutableArray<string> surfaces) => s_scuff with { Id = id, Title = title, Surfaces = surfaces };
}
