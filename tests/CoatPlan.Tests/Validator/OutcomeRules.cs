namespace CoatPlan.Tests.Validator;

/// <summary>The times that the plan promises as a whole.</summary>
internal static class OutcomeRules
{
    public static IEnumerable<Violation> Check(PlanUnderTest test)
    {
        var plan = test.Plan;
        double? lastEnd = plan.Steps.Length == 0 ? null : plan.Steps.Max(step => step.End);
        if (plan.Finish != lastEnd)
        {
            yield return new Violation(Rules.FinishNotLastEnd, "finish", $"{Write(plan.Finish)} is not the end of the last step, {Write(lastEnd)}");
        }

        if (plan.Start != test.Job.Start || plan.FinishBy != test.Job.FinishBy)
        {
            yield return new Violation(Rules.SurfaceMismatch, "start", "start or finish-by is not the job's");
        }

        if (test.Job.FinishBy is { } by && plan.Finish > by && test.ClaimsWhole)
        {
            yield return new Violation(Rules.AfterFinishBy, "finish", $"{Write(plan.Finish)} is after {Write(by)} and no reason is given");
        }

        if (plan.LowerBound > plan.Finish)
        {
            yield return new Violation(Rules.LowerBoundAfterFinish, "lowerBound", $"{Write(plan.LowerBound)} is after the finish {Write(plan.Finish)}");
        }

        double lastCoat = test.Coats.Select(step => step.End + test.LeastMinutes(test.Label(step.Product), "service")).DefaultIfEmpty(double.MinValue).Max();
        if (test.ClaimsWhole && test.Coats.Any() && !(plan.InService >= lastCoat))
        {
            yield return new Violation(Rules.InServiceTooEarly, "inService", $"{Write(plan.InService)} is before the last film reaches service, {Write(lastCoat)}");
        }
    }

    private static string Write(double? minutes) => minutes is { } known ? WallMinutes.Write(known) : "none";
}
