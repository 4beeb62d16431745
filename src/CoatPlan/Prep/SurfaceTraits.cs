using CoatPlan.Areas;
using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Prep;

/// <summary>What is known of a surface, as the words that rules ask for.</summary>
internal static class SurfaceTraits
{
    private const int LongestPhrase = 3;

    /// <summary>The words of a surface; those of the job are added by the caller.</summary>
    public static Traits Of(MeasuredSurface measured, ImmutableArray<PreparedLayer> layers, Job job, Catalogue catalogue)
    {
        var surface = measured.Surface;
        var finish = catalogue.Finish(surface.Finish);
        var bare = measured.BareShare.DecimalFractions > 0;
        var meetsBare = bare ? layers.FirstOrDefault() : null;
        var meetsFinish = finish.IsPaint ? layers.FirstOrDefault(layer => !layer.OnlyBare) : null;

        return Traits.None
            .With("material", surface.Material)
            .With("family", Word(catalogue.Material(surface.Material).Family.ToString()))
            .With("finish", surface.Finish)
            .Saying("painted", finish.IsPaint)
            .Saying("gloss", finish.Gloss)
            .With("condition", surface.Conditions)
            .With("form", surface.Form)
            .Saying("stays", surface.Stays)
            .With("near", surface.Near)
            .With("mask", surface.Masks.Select(mask => mask.Kind).OfType<string>())
            .Saying("masks", !surface.Masks.IsEmpty)
            .With("name", Phrases(surface.Name))
            .Saying("bare-spots", finish.IsPaint && bare)
            .With("lead", Lead(surface, finish, job, catalogue))
            .With("layer", layers.Select(layer => layer.Label.Preset).OfType<string>())
            .With("role", layers.Select(layer => layer.Label.Role).OfType<ProductRole>().Select(role => Word(role.ToString())))
            .With("hazard", layers.SelectMany(layer => layer.Label.Hazards))
            .Saying("heat", surface.Heat is not null)
            .Saying("heat-cured", layers.Any(layer => !layer.Label.Cure.IsEmpty))
            .With("first", Class(meetsBare ?? layers.FirstOrDefault()))
            .With("over", Class(meetsFinish))
            .With("rust", (meetsBare ?? layers.FirstOrDefault())?.Label.Rust is { } rust ? [Word(rust.ToString())] : [])
            .Saying("tooth", meetsFinish?.Label.WantsTooth ?? false)
            .Saying("softened-by-brake-fluid", layers.LastOrDefault()?.Label.SoftenedByBrakeFluid ?? false);
    }

    /// <summary>What is to be thought of lead and chromate in the old finish; nothing where there is none.</summary>
    private static IEnumerable<string> Lead(JobSurface surface, Finish finish, Job job, Catalogue catalogue)
    {
        if (!finish.IsPaint)
            return [];
        if (surface.LeadTest is { } test)
            return [test == LeadTestResult.Positive ? "found" : "ruled-out"];

        var old = job.Built < catalogue.Figures.Number("lead-before-year");
        return finish.MayHoldLead || (old && finish.OldMayHoldLead) ? ["suspected"] : [];
    }

    private static IEnumerable<string> Class(PreparedLayer? layer) => layer?.Label.Preset is { } preset ? [preset] : [];

    /// <summary>The words of a name in lower case, alone and in runs, each also without a plural s.</summary>
    private static IEnumerable<string> Phrases(string name)
    {
        var words = name.ToLowerInvariant()
            .Split([.. name.ToLowerInvariant().Where(c => !char.IsLetterOrDigit(c)).Distinct()], StringSplitOptions.RemoveEmptyEntries);
        for (var length = 1; length <= LongestPhrase; length++)
        {
            for (var at = 0; at + length <= words.Length; at++)
            {
                var phrase = string.Join(' ', words[at..(at + length)]);
                yield return phrase;
                if (phrase.EndsWith('s'))
                    yield return phrase[..^1];
            }
        }
    }

    /// <summary>LightMetal is light-metal in a rule file.</summary>
    private static string Word(string name) =>
        string.Concat(name.Select((c, at) => at > 0 && char.IsUpper(c) ? $"-{char.ToLowerInvariant(c)}" : $"{char.ToLowerInvariant(c)}"));
}
