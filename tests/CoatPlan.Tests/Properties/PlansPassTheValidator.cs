using CoatPlan.Timetable;

namespace CoatPlan.Tests.Properties;

/// <summary>Every plan of a drawn job keeps the contract, searched in full.</summary>
public class PlansPassTheValidator
{
    private const int Jobs = 15;

    [Fact]
    public void Every_plan_passes_the_validator() => Validated.Each(Draws.Jobs(Jobs), SearchDepth.Full);

    [Fact]
    public void A_job_that_is_half_done_is_planned_again_and_passes_the_validator() => Validated.EachHalfDone(Draws.Jobs(Jobs / 2), SearchDepth.Full);
}
