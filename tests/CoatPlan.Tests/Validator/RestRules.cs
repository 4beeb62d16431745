namespace CoatPlan.Tests.Validator;

/// <summary>Where the plan says that the job can rest a week, nothing is in hand, no tape is on, and no closing window of a wait is open.</summary>
internal static class RestRules
{
    private const double WeekMinutes = 7 * WallMinutes.Day;

    public static IEnumerable<Violation> Check(PlanUnderTest test) =>
        test.Plan.Rests.SelectMany(rest => Faults(test, rest).Select(fault => new Violation(Rules.RestInHand, rest.After, $"no rest at {WallMinutes.Write(rest.At)}: {fault}")));

    private static IEnumerable<string> Faults(PlanUnderTest test, PlannedRest rest)
    {
        var steps = test.Plan.Steps;
        if (test.Step(rest.After) is not { } after || after.End != rest.At)
        {
            yield return "it is not the end of that step";
        }

        if (steps.FirstOrDefault(step => step.Start < rest.At && step.End > rest.At) is { } inHand)
        {
            yield return $"{inHand.Id} is in hand";
        }

        foreach (var batch in steps.Where(step => step.Kind is "mask" or "remask" or "unmask").GroupBy(step => (step.Station, step.Batch)))
        {
            if (test.Job.TapeLimit < WeekMinutes && batch.Where(step => step.End <= rest.At).MaxBy(step => step.End) is { Kind: not "unmask" })
            {
                yield return "tape is on";
            }
        }

        foreach (var step in steps.Where(step => step.Start >= rest.At))
        {
            foreach (var wait in step.After.Where(wait => test.Step(wait.Step) is { } earlier && earlier.End <= rest.At && earlier.Start + wait.Most < step.Start + WeekMinutes))
            {
                yield return $"the window of {wait.Step} would close";
            }
        }
    }
}
