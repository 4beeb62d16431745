using CoatPlan.Timetable;

namespace CoatPlan.Tests.Properties;

/// <summary>
/// Every plan that is shown at once keeps the contract: it takes a small part of the time of a full search, so many more jobs are drawn. In four classes, since the runner gives
/// each core a class of its own.
/// </summary>
public abstract class PlansShownAtOncePassTheValidator(int part)
{
    private const int Jobs = 2000;
    private const int HalfDone = 300;
    private const int Parts = 4;

    [Fact]
    public void Every_plan_that_is_shown_at_once_passes_the_validator() => Validated.Each(Draws.Jobs(Jobs, part, Parts), SearchDepth.Quick);

    [Fact]
    public void A_job_that_is_half_done_is_planned_again_at_once_and_passes_the_validator() => Validated.EachHalfDone(Draws.Jobs(HalfDone, part, Parts), SearchDepth.Quick);

    /// <summary>The first of each four.</summary>
    public sealed class First() : PlansShownAtOncePassTheValidator(0);

    /// <summary>The second of each four.</summary>
    public sealed class Second() : PlansShownAtOncePassTheValidator(1);

    /// <summary>The third of each four.</summary>
    public sealed class Third() : PlansShownAtOncePassTheValidator(2);

    /// <summary>The fourth of each four.</summary>
    public sealed class Fourth() : PlansShownAtOncePassTheValidator(3);
}
