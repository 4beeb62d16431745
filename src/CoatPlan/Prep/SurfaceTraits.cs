using System.Text;
using CoatPlan.Areas;
using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Prep;

/// <summary>What is known of a surface, as the words that rules ask for.</summary>
internal static class SurfaceTraits
{
    private const int LongestPhrase = 3;

    private static readonly ImmutableArray<string> Families = Words<MaterialFamily>();
    private static readonly ImmutableArray<string> Roles = Words<ProductRole>();
    private static readonly ImmutableArray<string> RustRules = Words<RustRule>();

    /// <summary>The words of a surface; those of the job are added by the caller.</summary>
    public static Traits Of(
        MeasuredSurface measured, ImmutableArray<PreparedLayer> layers, ImmutableArray<Pairing> pairings, Job job, Catalogue catalogue)
    {
        var surface = measured.Surface;
        var finish = catalogue.Finish(surface.Finish);
        var bare = measured.BareShare.DecimalFractions > 0;
        var meetsBare = bare ? layers.FirstOrDefault() : null;
        var meetsFinish = finish.IsPaint ? layers.FirstOrDefault(layer => !layer.OnlyBare) : null;

        return new TraitsBuilder()
            .With("material", [surface.Material])
            .With("family", [Families[(int)catalogue.Material(surface.Material).Family]])
            .With("finish", [surface.Finish])
            .Saying("painted", finish.IsPaint)
            .Saying("gloss", finish.Gloss)
            .With("condition", surface.Conditions)
            .With("form", [surface.Form])
            .Saying("stays", surface.Stays)
            .With("near", surface.Near)
            .With("mask", [.. surface.Masks.Select(mask => mask.Kind).OfType<string>()])
            .Saying("masks", !surface.Masks.IsEmpty)
            .With("name", Phrases(surface.Name))
            .Saying("bare-spots", finish.IsPaint && bare)
            .With("lead", Lead(surface, finish, job, catalogue))
            .With("layer", [.. layers.Select(layer => layer.Label.Preset).OfType<string>()])
            .With("role", [.. layers.Select(layer => layer.Label.Role).OfType<ProductRole>().Select(role => Roles[(int)role])])
            .With("hazard", [.. layers.SelectMany(layer => layer.Label.Hazards)])
            .Saying("heat", surface.Heat is not null)
            .Saying("heat-cured", layers.Any(layer => !layer.Label.Cure.IsEmpty))
            .With("first", Class(meetsBare ?? layers.FirstOrDefault()))
            .With("over", Class(meetsFinish))
            .With("rust", (meetsBare ?? layers.FirstOrDefault())?.Label.Rust is { } rust ? [RustRules[(int)rust]] : [])
            .Saying("tooth", meetsFinish?.Label.WantsTooth ?? false)
            .Saying("softened-by-brake-fluid", layers.LastOrDefault()?.Label.SoftenedByBrakeFluid ?? false)
            .Saying("patch-test", pairings.Any(pairing => pairing.Judgement.Verdict == Verdict.Test))
            .Done();
    }

    /// <summary>What is to be thought of lead and chromate in the old finish; nothing where there is none.</summary>
    private static ImmutableArray<string> Lead(JobSurface surface, Finish finish, Job job, Catalogue catalogue)
    {
        if (!finish.IsPaint)
            return [];
        if (surface.LeadTest is { } test)
            return [test == LeadTestResult.Positive ? "found" : "ruled-out"];

        var old = job.Built < catalogue.Figures.Number("lead-before-year");
        return finish.MayHoldLead || (old && finish.OldMayHoldLead) ? ["suspected"] : [];
    }

    private static ImmutableArray<string> Class(PreparedLayer? layer) => layer?.Label.Preset is { } preset ? [preset] : [];

    /// <summary>The words of a name in lower case, alone and in runs, each also without a plural s.</summary>
    private static ImmutableArray<string> Phrases(string name)
    {
        var words = WordsOf(name.ToLowerInvariant());
        var phrases = ImmutableArray.CreateBuilder<string>();
        for (var length = 1; length <= LongestPhrase; length++)
        {
            for (var at = 0; at + length <= words.Count; at++)
            {
                var phrase = length == 1 ? words[at] : string.Join(' ', words.GetRange(at, length));
                phrases.Add(phrase);
                if (phrase.EndsWith('s'))
                    phrases.Add(phrase[..^1]);
            }
        }

        return phrases.DrainToImmutable();
    }

    /// <summary>What stands in a name between signs that are neither letters nor digits.</summary>
    private static List<string> WordsOf(string name)
    {
        var words = new List<string>();
        var start = 0;
        for (var at = 0; at <= name.Length; at++)
        {
            if (at < name.Length && char.IsLetterOrDigit(name[at]))
                continue;
            if (at > start)
                words.Add(name[start..at]);
            start = at + 1;
        }

        return words;
    }

    /// <summary>The words of a kind that is counted from 0 on.</summary>
    private static ImmutableArray<string> Words<T>()
        where T : struct, Enum =>
        [.. Enum.GetNames<T>().Select(Hyphened)];

    /// <summary>LightMetal is light-metal in a rule file.</summary>
    private static string Hyphened(string name)
    {
        var word = new StringBuilder(name.Length + 1);
        foreach (var c in name)
        {
            if (word.Length > 0 && char.IsUpper(c))
                word.Append('-');
            word.Append(char.ToLowerInvariant(c));
        }

        return word.ToString();
    }
}
