namespace CoatPlan.Tests.Validator;

/// <summary>In one air space nothing makes dust, and nothing is sprayed in another product, while a film is not dust-free.</summary>
internal static class DustRules
{
    private static readonly ImmutableArray<string> s_abrasive = ["derust", "featheredge", "scuff"];

    public static IEnumerable<Violation> Check(PlanUnderTest test)
    {
        var wet = test.Coats.Select(coat => (Coat: coat, Span: new Span(coat.Start, coat.End + test.LeastMinutes(test.Label(coat.Product), "dust")))).ToArray();
        foreach (var step in test.Plan.Steps.Where(step => !test.IsDone(step)))
        {
            if (step.MakesDust && wet.FirstOrDefault(film => test.Active(step).Any(film.Span.Overlaps)) is { Coat: not null } dusted)
            {
                yield return new Violation(Rules.DustOverWetFilm, step.Id, $"makes dust while {dusted.Coat.Id} is not dust-free");
            }

            if (step.Spray && wet.FirstOrDefault(film => film.Coat != step && film.Coat.Product != step.Product && film.Span.Overlaps(new Span(step.Start, step.End)))
                is { Coat: not null } sprayed)
            {
                yield return new Violation(Rules.SprayOverWetFilm, step.Id, $"sprays {step.Product} while {sprayed.Coat.Id} is not dust-free");
            }

            if (s_abrasive.Contains(step.Kind) && !step.MakesDust && !WorkedWet(test, step))
            {
                yield return new Violation(Rules.DustDenied, step.Id, $"{step.Kind} makes dust, the plan says it does not");
            }
        }
    }

    /// <summary>Where old paint may hold lead or brake dust asbestos, and on zinc and cadmium, whose dust is a poison, the work is done wet.</summary>
    private static bool WorkedWet(PlanUnderTest test, PlannedStep step) =>
        step.Surfaces.Any(id => test.Plan.Surfaces.Any(surface => surface.Id == id && (surface.Material.Contains("zinc", StringComparison.Ordinal) || surface.Material.Contains("cadmium", StringComparison.Ordinal))))
        || test.Plan.Root.GetProperty("warnings").EnumerateArray().Any(warning =>
            warning.GetProperty("code").GetString() is "lead-suspected" or "asbestos-suspected"
            && (warning.GetProperty("surface").GetString() is not { } surface || step.Surfaces.Contains(surface)));
}
