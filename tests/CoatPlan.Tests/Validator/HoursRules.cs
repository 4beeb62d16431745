namespace CoatPlan.Tests.Validator;

/// <summary>Nothing before its time, hands only in working hours, and never more people, spots or rack places than there are.</summary>
internal static class HoursRules
{
    // Times are printed on whole minutes, so a broken step may differ from its hands-on minutes by the rounding.
    private const double RoundingMinutes = 1.5;

    public static IEnumerable<Violation> Check(PlanUnderTest test) =>
        [.. InTime(test), .. InHours(test), .. People(test), .. Spots(test), .. Rack(test)];

    private static IEnumerable<Violation> InTime(PlanUnderTest test)
    {
        double earliest = Math.Max(test.Job.Start, test.Job.AsOf ?? double.MinValue);
        return test.Plan.Steps.Where(step => step.Start < earliest && !test.IsDone(step))
            .Select(step => new Violation(Rules.BeforeStart, step.Id, $"starts {WallMinutes.Write(step.Start)}, before {WallMinutes.Write(earliest)}"));
    }

    private static IEnumerable<Violation> InHours(PlanUnderTest test)
    {
        foreach (var step in test.Plan.Steps.Where(step => step.Hands > 0 && step.People > 0 && !test.IsDone(step)))
        {
            var spans = test.Job.Hours.Touching(step.Start, step.End);
            if (step.IsCoat)
            {
                if (!spans.Any(span => span.Holds(new Span(step.Start, step.End))))
                {
                    yield return new Violation(Rules.CoatAcrossBreak, step.Id, "the coat does not lie inside one working span");
                }
            }
            else if (!spans.Any(span => span.Start <= step.Start && step.Start < span.End) || !spans.Any(span => span.Start < step.End && step.End <= span.End))
            {
                yield return new Violation(Rules.OutsideHours, step.Id, "starts or ends when nobody works");
                continue;
            }

            double worked = test.Job.Hours.Within(step.Start, step.End).Sum(span => span.Length);
            bool waitsToo = step.Kind == "heat-cure";
            if (!step.IsCoat && (worked < step.Hands - RoundingMinutes || (!waitsToo && worked > step.Hands + RoundingMinutes))
                || step.IsCoat && Math.Abs(step.End - step.Start - step.Hands) > RoundingMinutes)
            {
                yield return new Violation(Rules.HandsDoNotAddUp, step.Id, $"{worked} working minutes for {step.Hands} minutes of hands");
            }
        }
    }

    private static IEnumerable<Violation> People(PlanUnderTest test) =>
        test.Plan.Steps.Where(step => step.People > 0 && step.Hands > 0 && !test.IsDone(step)).GroupBy(step => step.Station).SelectMany(station =>
            Overload(station.SelectMany(step => test.Active(step).Select(span => (step.Id, Span: span, Amount: step.People))), test.Job.People)
                .Select(at => new Violation(Rules.TooManyPeople, at.Id, $"{at.Amount} people busy at {WallMinutes.Write(at.Time)}, {test.Job.People} there")));

    private static IEnumerable<Violation> Spots(PlanUnderTest test) =>
        Overload(test.Coats.Where(step => step.Spray && !test.IsDone(step)).Select(step => (step.Id, new Span(step.Start, step.End), 1)), test.Job.Spots)
            .Select(at => new Violation(Rules.TooManySpots, at.Id, $"{at.Amount} batches sprayed at {WallMinutes.Write(at.Time)}, {test.Job.Spots} spots"));

    /// <summary>A piece that came off the vehicle hangs or lies from its first coat until its last can be handled.</summary>
    private static IEnumerable<Violation> Rack(PlanUnderTest test)
    {
        if (test.Job.Rack is not { } places)
        {
            return [];
        }

        var held = test.Runs.Where(run => !run.Surface.Stays && run.Coats.Length > 0).Select(run =>
        {
            var last = run.Coats[^1];
            var first = run.Coats[0].Step;
            int pieces = first is null ? run.Surface.Count : first.Pieces[first.Surfaces.IndexOf(run.Surface.Id)];
            return (Id: last.Where, Span: new Span(run.Coats[0].Start, last.End + test.LeastMinutes(test.Label(last.Product), "handle")), Amount: pieces);
        });
        return Overload(held, places).Select(at => new Violation(Rules.RackFull, at.Id, $"{at.Amount} pieces wet at {WallMinutes.Write(at.Time)}, {places} places"));
    }

    /// <summary>Each start at which more is in use than there is.</summary>
    private static IEnumerable<(string Id, double Time, int Amount)> Overload(IEnumerable<(string Id, Span Span, int Amount)> uses, int most)
    {
        var all = uses.Where(use => use.Span.Length > 0).ToArray();
        foreach (var use in all)
        {
            int amount = all.Where(other => other.Span.Start <= use.Span.Start && use.Span.Start < other.Span.End).Sum(other => other.Amount);
            if (amount > most)
            {
                yield return (use.Id, use.Span.Start, amount);
            }
        }
    }
}
