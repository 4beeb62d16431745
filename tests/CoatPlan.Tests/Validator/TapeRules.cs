namespace CoatPlan.Tests.Validator;

/// <summary>A surface that is to be masked is masked whenever it is coated; tape lies on no soft film, comes off no sooner than touch and no later than its limit.</summary>
internal static class TapeRules
{
    private const double Slack = 1e-6;

    // Minutes from a coat to the unmasking. Source: common practice, about an hour.
    private const double UsualLeast = 60;

    public static IEnumerable<Violation> Check(PlanUnderTest test) => test.Runs.SelectMany(run => Run(test, run));

    private static IEnumerable<Violation> Run(PlanUnderTest test, CoatRun run)
    {
        var taped = run.Others.Where(step => step.Kind is "mask" or "remask").ToArray();
        var bared = run.Others.Where(step => step.Kind == "unmask").ToArray();
        if (run.Surface.Masked && !test.AnyDoneOn(run.Surface.Id))
        {
            foreach (var coat in run.Coats.Where(coat => !Covered(coat, taped, bared)))
            {
                yield return new Violation(Rules.MaskMissing, coat.Where, $"{run.Surface.Id} is not masked");
            }
        }

        foreach (var tape in taped.Where(step => !test.IsDone(step)))
        {
            if (run.Coats.LastOrDefault(coat => coat.Start < tape.Start) is { } below
                && tape.Start < below.End + test.LeastMinutes(test.Label(below.Product), "tape") - Slack)
            {
                yield return new Violation(Rules.TapeOverWetFilm, tape.Id, $"tape goes on {tape.Start - below.End} min after {below.Where}");
            }
        }

        foreach (var tape in taped)
        {
            var off = bared.FirstOrDefault(step => step.Start >= tape.End - Slack);
            if (off is null && test.ClaimsWhole && !test.AnyDoneOn(run.Surface.Id))
            {
                yield return new Violation(Rules.TapeLeftOn, tape.Id, $"nothing takes the tape of {run.Surface.Id} off");
            }
            else if (off is not null && !test.IsDone(off) && off.Start - tape.Start > test.Job.TapeLimit + Slack && !IsPastMending(test, run, tape, off))
            {
                yield return new Violation(Rules.TapeTooLong, off.Id, $"tape has been on for {off.Start - tape.Start} min, limit {test.Job.TapeLimit}");
            }
        }

        foreach (var off in bared.Where(step => !test.IsDone(step)))
        {
            if (run.Coats.LastOrDefault(coat => coat.Start < off.End) is { } last
                && off.Start < last.End + test.LeastMinutes(test.Label(last.Product), "touch") - Slack)
            {
                yield return new Violation(Rules.UnmaskTooEarly, off.Id, $"{off.Start - last.End} min after {last.Where}");
            }
        }
    }

    // Tape that was on before the plan, and could not come off in time in any plan: no hands before its limit, or a film below it too young.
    private static bool IsPastMending(PlanUnderTest test, CoatRun run, PlannedStep tape, PlannedStep off)
    {
        double soonest = run.Coats.LastOrDefault(coat => coat.Start < off.Start) is { } below
            ? below.End + Math.Max(UsualLeast, test.LeastMinutes(test.Label(below.Product), "touch"))
            : double.MinValue;
        double from = Math.Max(test.Job.AsOf ?? test.Job.Start, soonest);
        double limit = tape.Start + test.Job.TapeLimit;
        return test.IsDone(tape) && (from > limit - off.Hands || test.Job.Hours.Within(from, limit).Sum(span => span.Length) < off.Hands);
    }

    private static bool Covered(CoatFact coat, PlannedStep[] taped, PlannedStep[] bared) =>
        taped.Any(tape => tape.End <= coat.Start + Slack && !bared.Any(off => off.Start >= tape.End - Slack && off.End <= coat.Start + Slack));
}
