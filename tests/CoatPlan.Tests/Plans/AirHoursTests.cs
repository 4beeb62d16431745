using CoatPlan.Tests.Sheets;

namespace CoatPlan.Tests.Plans;

public class AirHoursTests
{
    [Fact]
    public void The_air_is_told_from_the_start_over_every_full_hour_to_the_finish()
    {
        var plan = SheetSamples.Roadster();
        var hours = plan.AirHours;

        hours[0].At.ShouldBe(plan.Start);
        hours[^1].At.ShouldBe(plan.Finish!.Value);
        hours.Skip(1).SkipLast(1).ShouldAllBe(one => one.At.Minute == 0 && one.At.Second == 0);
        foreach (var (one, next) in hours.Zip(hours.Skip(1)))
            Period.Between(one.At, next.At, PeriodUnits.Minutes).Minutes.ShouldBeInRange(1, 60);
    }

    [Fact]
    public void It_agrees_with_the_steps_that_start_on_a_full_hour()
    {
        var plan = SheetSamples.Roadster();
        var both = plan.Steps.Where(step => !step.Surfaces.IsEmpty).Join(plan.AirHours, step => step.Start, one => one.At, (step, one) => (step, one)).ToArray();

        both.ShouldNotBeEmpty();
        foreach (var (step, one) in both)
        {
            one.AirC.ShouldBe(step.AirC, 1e-9);
            one.DewPointC.ShouldBe(step.DewPointC, 1e-9);
            // The coldest piece of the job is at least as cold as the coldest of one step.
            one.SurfaceC.ShouldBeLessThanOrEqualTo(step.SurfaceC + 1e-9);
        }
    }

    [Fact]
    public void The_dew_point_lies_at_or_below_the_air_and_the_metal_follows_it() =>
        SheetSamples.Roadster().AirHours.ShouldAllBe(one => one.DewPointC <= one.AirC && Math.Abs(one.SurfaceC - one.AirC) < 10);
}
