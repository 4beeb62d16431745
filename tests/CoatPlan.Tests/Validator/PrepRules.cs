namespace CoatPlan.Tests.Validator;

/// <summary>Clean before abrasion, clean again before paint in the same go, and back on the vehicle only when the film can be handled.</summary>
internal static class PrepRules
{
    private const double Slack = 1e-6;

    // Where the periods of a class are shorter than wipe, flash, tack and coat together, one go runs over the break between two of them.
    private const double OneGoMinutes = 90;
    private const double FlashMinutes = 30;
    private static readonly ImmutableArray<string> s_abrasive = ["derust", "featheredge", "scuff"];

    public static IEnumerable<Violation> Check(PlanUnderTest test) => test.Runs.Where(run => !test.AnyDoneOn(run.Surface.Id)).SelectMany(run => Run(test, run));

    private static IEnumerable<Violation> Run(PlanUnderTest test, CoatRun run)
    {
        if (run.Others.FirstOrDefault(step => s_abrasive.Contains(step.Kind)) is { } abrasion
            && !run.Others.Any(step => step.Kind == "solvent-clean" && step.End <= abrasion.Start + Slack))
        {
            yield return new Violation(Rules.SolventCleanMissing, abrasion.Id, $"{run.Surface.Id} is abraded before it is solvent-clean");
        }

        if (run.Coats.Length > 0)
        {
            foreach (var violation in Wiped(test, run))
            {
                yield return violation;
            }

            foreach (var refit in run.Others.Where(step => step.Kind == "refit"))
            {
                var last = run.Coats[^1];
                if (refit.Start < last.End + test.LeastMinutes(test.Label(last.Product), "handle") - Slack)
                {
                    yield return new Violation(Rules.RefitTooEarly, refit.Id, $"{refit.Start - last.End} min after {last.Where} on {run.Surface.Id}");
                }
            }
        }

        if (test.ClaimsWhole && run.Others.FirstOrDefault(step => step.Kind == "strip-down") is { } off && !run.Others.Any(step => step.Kind == "refit"))
        {
            yield return new Violation(Rules.RefitMissing, off.Id, $"{run.Surface.Id} comes off and does not go back");
        }
    }

    /// <summary>Before the first coat, and before a coat that follows new dust on the surface, stands a final wipe in the same go: the same working span, or little time between.</summary>
    private static IEnumerable<Violation> Wiped(PlanUnderTest test, CoatRun run)
    {
        for (int i = 0; i < run.Coats.Length; i++)
        {
            var coat = run.Coats[i];
            double since = i == 0 ? double.MinValue : run.Coats[i - 1].End;
            double dusty = run.Others.Where(step => step.MakesDust && step.End <= coat.Start + Slack && step.Start >= since).Select(step => step.End).DefaultIfEmpty(double.MinValue).Max();
            if (i > 0 && dusty <= since)
            {
                continue;
            }

            bool wiped = run.Others.Any(step => step.Kind == "final-wipe" && step.Start >= dusty - Slack && step.End <= coat.Start + Slack
                && (test.Job.Hours.SpanHolding(step.End, coat.Start) is not null || coat.Start - step.End <= OneGoMinutes || !FitsOneSpan(test, step, coat)));
            if (!wiped)
            {
                yield return new Violation(Rules.FinalWipeMissing, coat.Where, $"{run.Surface.Id} is not wiped in the same go before this coat");
            }
        }
    }

    /// <summary>Whether any working span of the fortnight around holds wipe, flash and coat together.</summary>
    private static bool FitsOneSpan(PlanUnderTest test, PlannedStep wipe, CoatFact coat) =>
        wipe.Hands + FlashMinutes + coat.End - coat.Start <= test.Job.Hours.Touching(coat.Start - 7 * WallMinutes.Day, coat.Start + 7 * WallMinutes.Day).Max(span => span.Length);
}
