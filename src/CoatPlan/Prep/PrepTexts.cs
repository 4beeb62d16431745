using CoatPlan.Presets;
using CoatPlan.Problems;

namespace CoatPlan.Prep;

/// <summary>What the prep sequence reads beside the catalogue: its rules and its warnings.</summary>
/// <param name="Rules">prep.yaml.</param>
/// <param name="Warnings">warnings.yaml.</param>
public sealed record PrepTexts(PrepRules Rules, WarningTexts Warnings)
{
    /// <summary>Those that come with the library.</summary>
    public static PrepTexts Standard { get; } = new(PrepRules.Standard, WarningTexts.Standard);

    /// <summary>The standard ones with those of a user's files that are <see cref="RuleFiles"/> over them, later ones winning.</summary>
    /// <param name="overrides">The user's files; others among them are passed over.</param>
    /// <param name="problems">What is wrong with them; the texts are not to be used unless it is empty.</param>
    public static PrepTexts Over(IEnumerable<PresetText> overrides, out ImmutableArray<Problem> problems)
    {
        ArgumentNullException.ThrowIfNull(overrides);
        var texts = Standard;
        var found = ImmutableArray.CreateBuilder<Problem>();
        foreach (var file in overrides)
        {
            ImmutableArray<Problem> wrong = [];
            if (RuleFiles.Is(file, RuleFiles.Prep))
                texts = texts with { Rules = texts.Rules.With(file.Text, file.Name, out wrong) };
            else if (RuleFiles.Is(file, RuleFiles.Warnings))
                texts = texts with { Warnings = texts.Warnings.With(file.Text, file.Name, out wrong) };
            found.AddRange(wrong);
        }

        problems = found.ToImmutable();
        return texts;
    }
}
