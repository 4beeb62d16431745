namespace CoatPlan.Tests.Validator;

/// <summary>Ids are unique, what is named exists, surfaces are those of the job, and every step says why.</summary>
internal static class IdentityRules
{
    private const double AreaSlack = 0.002;

    public static IEnumerable<Violation> Check(PlanUnderTest test)
    {
        var plan = test.Plan;
        foreach (var group in plan.Steps.GroupBy(step => step.Id).Where(group => group.Count() > 1))
        {
            yield return new Violation(Rules.DuplicateId, group.Key, $"{group.Count()} steps have this id");
        }

        foreach (var group in plan.Surfaces.GroupBy(surface => surface.Id).Where(group => group.Count() > 1))
        {
            yield return new Violation(Rules.DuplicateId, group.Key, $"{group.Count()} surfaces have this id");
        }

        var surfaces = plan.Surfaces.Select(surface => surface.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var step in plan.Steps)
        {
            foreach (var wait in step.After.Where(wait => test.Step(wait.Step) is null))
            {
                yield return new Violation(Rules.UnknownReference, step.Id, $"waits for a step '{wait.Step}' that is not there");
            }

            foreach (string surface in step.Surfaces.Where(surface => !surfaces.Contains(surface)))
            {
                yield return new Violation(Rules.UnknownReference, step.Id, $"names a surface '{surface}' that is not there");
            }

            if (step.Product is not null && !test.Job.Products.ContainsKey(step.Product))
            {
                yield return new Violation(Rules.UnknownReference, step.Id, $"names a product '{step.Product}' that the job does not have");
            }

            if (step.End < step.Start)
            {
                yield return new Violation(Rules.EndsBeforeStart, step.Id, "ends before it starts");
            }

            if (string.IsNullOrWhiteSpace(step.Why))
            {
                yield return new Violation(Rules.WhyMissing, step.Id, "does not say why it is there");
            }
        }

        foreach (var violation in SurfacesOfTheJob(test))
        {
            yield return violation;
        }
    }

    private static IEnumerable<Violation> SurfacesOfTheJob(PlanUnderTest test)
    {
        foreach (var asked in test.Job.Surfaces)
        {
            var planned = test.Plan.Surfaces.FirstOrDefault(surface => surface.Id == asked.Id);
            if (planned is null)
            {
                yield return new Violation(Rules.SurfaceMismatch, asked.Id, "the job has it, the plan does not");
                continue;
            }

            if (planned.Count != asked.Count || planned.System != asked.System)
            {
                yield return new Violation(Rules.SurfaceMismatch, asked.Id, "count or system is not the job's");
            }

            if (asked.Relief is { } relief && Math.Abs(planned.Relief - relief) > AreaSlack * relief)
            {
                yield return new Violation(Rules.SurfaceMismatch, asked.Id, $"relief {planned.Relief} is not the job's {relief}");
            }

            if (asked.AreaM2 is { } area && Math.Abs(planned.AreaM2 - area * planned.Relief) > AreaSlack * area * planned.Relief + 0.0005)
            {
                yield return new Violation(Rules.SurfaceMismatch, asked.Id, $"area {planned.AreaM2} is not {area} times relief {planned.Relief}");
            }
        }

        foreach (var extra in test.Plan.Surfaces.Where(surface => test.Job.Surface(surface.Id) is null))
        {
            yield return new Violation(Rules.SurfaceMismatch, extra.Id, "the plan has it, the job does not");
        }
    }
}
