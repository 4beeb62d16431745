namespace CoatPlan.Tests.Validator;

/// <summary>The coats of each surface: all there, in order, of the right product, each inside a window of the label or after its rework.</summary>
internal static class CoatRules
{
    private const double Slack = 1e-6;
    private static readonly ImmutableArray<string> s_rework = ["scuff", "derust", "featheredge", "convert", "solvent-clean"];

    public static IEnumerable<Violation> Check(PlanUnderTest test) =>
        [.. test.Coats.SelectMany(step => Marks(test, step)), .. test.Plan.Steps.Where(step => !step.IsCoat && step.LastSafeStart is not null)
            .Select(step => new Violation(Rules.LastSafeStart, step.Id, "only a coat has a last safe start")),
            .. test.Runs.SelectMany(run => Order(test, run).Concat(Products(test, run)).Concat(Numbers(test, run)).Concat(Gaps(test, run)))];

    private static IEnumerable<Violation> Marks(PlanUnderTest test, PlannedStep step)
    {
        if (step.Layer is null || step.Coat is null || step.Product is null || step.Batch is null || step.Of is null)
        {
            yield return new Violation(Rules.CoatMissing, step.Id, "a coat needs batch, product, layer, coat and of");
        }

        if (step.Mist != (step.Coat == 0))
        {
            yield return new Violation(Rules.MistMismatch, step.Id, "a mist coat is coat 0, and no other is");
        }

        if (test.IsDone(step))
        {
            yield break;
        }

        if (step.LastSafeStart is null || step.LastSafeStart < step.Start)
        {
            yield return new Violation(Rules.LastSafeStart, step.Id, "the last safe start is before the start or missing");
        }
    }

    private static IEnumerable<Violation> Order(PlanUnderTest test, CoatRun run)
    {
        for (int i = 1; i < run.Coats.Length; i++)
        {
            CoatFact before = run.Coats[i - 1], after = run.Coats[i];
            if ((before.Layer, before.Coat).CompareTo((after.Layer, after.Coat)) >= 0)
            {
                yield return new Violation(
                    Rules.CoatsOutOfOrder, after.Where, $"layer {after.Layer} coat {after.Coat} comes after layer {before.Layer} coat {before.Coat} on {run.Surface.Id}");
            }
        }
    }

    private static IEnumerable<Violation> Products(PlanUnderTest test, CoatRun run)
    {
        var layers = test.Job.Systems[run.Surface.System];
        return run.Coats.Where(fact => fact.Layer > layers.Length || layers[fact.Layer - 1].Product != fact.Product)
            .Select(fact => new Violation(Rules.WrongProduct, fact.Where, $"{fact.Product} is not layer {fact.Layer} of {run.Surface.System}"));
    }

    private static IEnumerable<Violation> Numbers(PlanUnderTest test, CoatRun run)
    {
        if (!test.ClaimsWhole)
        {
            yield break;
        }

        var layers = test.Job.Systems[run.Surface.System];
        for (int layer = 1; layer <= layers.Length; layer++)
        {
            var asked = layers[layer - 1];
            var coats = run.Coats.Where(fact => fact.Layer == layer).Select(fact => fact.Coat).Distinct().Order().ToArray();
            if (coats.Length == 0)
            {
                // Spots that are not bare get no spot coat.
                if (!asked.OnlyBare || run.Surface.IsBare)
                {
                    yield return new Violation(Rules.CoatMissing, run.Surface.Id, $"layer {layer} has no coat");
                }

                continue;
            }

            int of = run.Coats.Where(fact => fact.Layer == layer).Max(fact => fact.Of ?? fact.Coat);
            int[] complete = [.. Enumerable.Range(asked.Mist ? 0 : 1, asked.Mist ? of + 1 : of)];
            if (!coats.Where(coat => coat > 0 || asked.Mist).SequenceEqual(complete))
            {
                yield return new Violation(Rules.CoatMissing, run.Surface.Id, $"layer {layer} has coats {string.Join(", ", coats)} of {of}");
            }

            if (asked.Coats is { } least && of < least)
            {
                yield return new Violation(Rules.TooFewCoats, run.Surface.Id, $"layer {layer} has {of} coats, the system asks {least}");
            }
        }
    }

    private static IEnumerable<Violation> Gaps(PlanUnderTest test, CoatRun run)
    {
        for (int i = 1; i < run.Coats.Length; i++)
        {
            CoatFact before = run.Coats[i - 1], after = run.Coats[i];
            if (after.Step is null || test.IsDone(after.Step) || test.Label(before.Product) is not { } label
                || label.WindowsFor(before.Product == after.Product) is not { } windows)
            {
                continue;
            }

            double slow = test.Slowness(label), fast = test.Haste(label);
            bool inside = windows.Any(window => after.Start >= before.End + window.Open * slow - Slack
                && (window.Close is not { } close || after.Start <= before.Start + close / fast + Slack));
            if (!inside && !Reworked(run, label, before, after, slow))
            {
                yield return new Violation(
                    Rules.OutOfWindow, after.Where,
                    $"{after.Start - before.End} min after the end and {after.Start - before.Start} after the start of {before.Where} on {run.Surface.Id} is in no window");
            }
        }
    }

    private static bool Reworked(CoatRun run, LabelView label, CoatFact before, CoatFact after, double slow)
    {
        double dry = before.End + (label.Stage("through") ?? 0) * slow;
        bool waited = label.Missed is "wait" || (label.Missed is null && label.HasPreset);
        return (waited && after.Start >= dry - Slack)
            || run.Others.Any(step => s_rework.Contains(step.Kind) && step.Start >= dry - Slack && step.End <= after.Start + Slack);
    }
}
