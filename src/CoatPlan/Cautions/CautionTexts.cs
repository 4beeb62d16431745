using CoatPlan.Prep;
using CoatPlan.Presets;
using CoatPlan.Problems;

namespace CoatPlan.Cautions;

/// <summary>Every caution: cautions.yaml, and what a shop's own file puts over it.</summary>
public sealed record CautionTexts
{
    private static readonly Lazy<CautionTexts> TheStandard =
        new(() => Read(RuleFile.Embedded(RuleFiles.Cautions), null, new ProblemList(RuleFiles.Cautions)));

    /// <summary>The cautions that come with the library.</summary>
    public static CautionTexts Standard => TheStandard.Value;

    internal ImmutableArray<CautionRow> Rows { get; init; } = [];

    /// <summary>The same with a shop's own rows: those whose code stands here replace it, others come before the last.</summary>
    /// <param name="text">A file of the shape of cautions.yaml.</param>
    /// <param name="file">Its name, for problems.</param>
    /// <param name="problems">What is wrong with it, in the order of the text; the cautions are not to be used unless it is empty.</param>
    public CautionTexts With(string text, string file, out ImmutableArray<Problem> problems)
    {
        ArgumentNullException.ThrowIfNull(text);
        var list = new ProblemList(file);
        var texts = Read(text, this, list);
        problems = list.InOrder();
        return texts;
    }

    /// <summary>The standard ones with those of a user's cautions.yaml over them, later ones winning.</summary>
    /// <param name="overrides">The user's files; others among them are passed over.</param>
    /// <param name="problems">What is wrong with them; the cautions are not to be used unless it is empty.</param>
    public static CautionTexts Over(IEnumerable<PresetText> overrides, out ImmutableArray<Problem> problems)
    {
        ArgumentNullException.ThrowIfNull(overrides);
        var texts = Standard;
        var found = ImmutableArray.CreateBuilder<Problem>();
        foreach (var file in overrides.Where(file => RuleFiles.Is(file, RuleFiles.Cautions)))
        {
            texts = texts.With(file.Text, file.Name, out var wrong);
            found.AddRange(wrong);
        }

        problems = found.ToImmutable();
        return texts;
    }

    internal static CautionTexts Read(string text, CautionTexts? under, ProblemList problems)
    {
        var file = new RuleFile(text, problems);
        var rows = file.Rows("cautions", "caution", row => new CautionRow(row.Key, row.Condition(CautionFacts.Keys), row.Text("text"), row.Text("source")));
        file.Close();

        var merged = PrepRules.Merge(under?.Rows, rows, row => row.Code);
        var last = under?.Rows.LastOrDefault()?.Code;
        return new CautionTexts { Rows = [.. merged.Where(row => row.Code != last), .. merged.Where(row => row.Code == last)] };
    }
}
