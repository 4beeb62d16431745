namespace CoatPlan.Tests.Validator;

/// <summary>In each stretch of the working hours up to the finish, the people who work and those of whom the plan says why they do not are all the people.</summary>
internal static class IdleRules
{
    private const double RoundingMinutes = 1.5;

    public static IEnumerable<Violation> Check(PlanUnderTest test)
    {
        // What was done was done when it was done, in working hours or not: no sum of a plan's minutes can be asked of it.
        if (test.Plan.Idle is not { } idle || test.Plan.Finish is not { } finish || test.Job.Done.Length > 0)
        {
            yield break;
        }

        double from = Math.Max(test.Job.Start, test.Job.AsOf ?? double.MinValue);
        foreach (var open in test.Job.Hours.Within(from, finish))
        {
            // A span in which the job starts is set up from there.
            double begins = Math.Min(open.End, Math.Max(open.Start, test.Job.Start + test.Job.Hours.SetUp));
            for (int station = test.Job.Stations > 1 ? 1 : 0; station <= (test.Job.Stations > 1 ? test.Job.Stations : 0); station++)
            {
                double busy = test.Plan.Steps.Where(step => step.Station == station).Sum(step => step.People * Shared(step.Start, step.End, begins, open.End));
                double told = idle.Where(stretch => stretch.Station == station).Sum(stretch => stretch.People * Shared(stretch.From, stretch.To, begins, open.End));
                double all = test.Job.People * (open.End - begins);
                if (Math.Abs(busy + told - all) > RoundingMinutes)
                {
                    yield return new Violation(Rules.IdleDoesNotAddUp, "idle", $"station {station}, span {WallMinutes.Write(open.Start)}: {busy} minutes of work and {told} idle of {all}");
                }
            }
        }
    }

    private static double Shared(double from, double to, double open, double close) => Math.Max(0, Math.Min(to, close) - Math.Max(from, open));
}
