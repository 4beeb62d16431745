namespace CoatPlan.Tests.Validator;

/// <summary>Every wait that the plan says it keeps is kept, and none promises less than the label.</summary>
internal static class WaitRules
{
    private const double Slack = 1e-6;
    private static readonly ImmutableArray<string> s_drying = ["dust", "touch", "tape", "recoat", "handle", "through"];

    public static IEnumerable<Violation> Check(PlanUnderTest test)
    {
        foreach (var step in test.Plan.Steps.Where(step => !test.IsDone(step)))
        {
            foreach (var wait in step.After)
            {
                if (test.Step(wait.Step) is { } before)
                {
                    foreach (var violation in Kept(test, step, before, wait))
                    {
                        yield return violation;
                    }
                }
            }
        }
    }

    private static IEnumerable<Violation> Kept(PlanUnderTest test, PlannedStep step, PlannedStep before, PlannedWait wait)
    {
        if (step.Start < before.End + (wait.Least ?? 0) - Slack)
        {
            yield return new Violation(Rules.WaitedTooLittle, step.Id, $"starts {step.Start - before.End} min after the end of {before.Id}, least {wait.Least}");
        }

        if (wait.Most is { } most && step.Start > before.Start + most + Slack)
        {
            yield return new Violation(Rules.WaitedTooLong, step.Id, $"starts {step.Start - before.Start} min after the start of {before.Id}, most {most}");
        }

        if (!s_drying.Contains(wait.Stage))
        {
            yield break;
        }

        var label = test.Label(before.Product);
        if (wait.Label is { } promised && (wait.Least ?? 0) < promised - Slack)
        {
            yield return new Violation(Rules.LeastBelowLabel, step.Id, $"least {wait.Least} min is under the label's {promised}");
        }

        if (before.IsCoat && label?.Stage(wait.Stage) is { } stated && wait.Label is { } said && Math.Abs(said - stated) > 1)
        {
            yield return new Violation(Rules.LabelMismatch, step.Id, $"the label says {wait.Stage} at {stated} min, the plan {said}");
        }
    }
}
