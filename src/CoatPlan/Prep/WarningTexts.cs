using CoatPlan.Presets;
using CoatPlan.Problems;

namespace CoatPlan.Prep;

/// <summary>Every sentence that warns of a job, by row; any room can write one from it.</summary>
public sealed record WarningTexts
{
    private static readonly Lazy<WarningTexts> TheStandard =
        new(() => Read(RuleFile.Embedded(RuleFiles.Warnings), null, new ProblemList(RuleFiles.Warnings)));

    /// <summary>The texts that come with the library.</summary>
    public static WarningTexts Standard => TheStandard.Value;

    // Every surface is asked for each of its own.
    private readonly ILookup<string, WarningRow> byCondition = Array.Empty<WarningRow>().ToLookup(row => row.About, StringComparer.Ordinal);

    internal ImmutableArray<DerivedTrait> Traits { get; init; } = [];

    internal ImmutableArray<WarningRow> Rows
    {
        get;
        init
        {
            field = value;
            byCondition = value.Where(row => row.ByCondition).ToLookup(row => row.About, StringComparer.Ordinal);
        }
    } = [];

    internal ImmutableArray<JudgementRow> Judgements { get; init; } = [];

    /// <summary>Keys of reasons of the compatibility tables that hold for a material under any primer.</summary>
    internal ImmutableArray<string> Through { get; init; } = [];

    /// <summary>The contract's codes that any row has, in the order of the file.</summary>
    public IEnumerable<string> Codes => Rows.Select(row => row.Code).Distinct(StringComparer.Ordinal);

    /// <summary>The same with a shop's own rows: those whose id stands here replace it, others are added.</summary>
    /// <param name="text">A file of the shape of warnings.yaml; sections may be left out.</param>
    /// <param name="file">Its name, for problems.</param>
    /// <param name="problems">What is wrong with it, in the order of the text; the texts are not to be used unless it is empty.</param>
    public WarningTexts With(string text, string file, out ImmutableArray<Problem> problems)
    {
        ArgumentNullException.ThrowIfNull(text);
        var list = new ProblemList(file);
        var texts = Read(text, this, list);
        problems = list.InOrder();
        return texts;
    }

    /// <summary>Writes the warning of a row.</summary>
    /// <param name="row">Id of the row, as in <c>too-few-coats</c>.</param>
    /// <param name="surface">Id of the surface it is about; null: none.</param>
    /// <param name="product">Key of the product it is about; null: none.</param>
    /// <param name="values">What stands in braces in the row's text, by name, already written for the reader.</param>
    /// <exception cref="ArgumentException">No such row, or a name of its text without a value.</exception>
    public Warning Write(string row, string? surface, string? product, params IEnumerable<(string Name, string Value)> values)
    {
        var found = Rows.FirstOrDefault(other => other.Id == row) ?? throw new ArgumentException($"no warning is called '{row}'", nameof(row));
        var named = values.ToDictionary(value => value.Name, value => value.Value, StringComparer.Ordinal);
        return Write(found, surface, product, found.Status, named.GetValueOrDefault);
    }

    internal static Warning Write(WarningRow row, string? surface, string? product, string status, Func<string, string?> valueOf) =>
        new(row.Code, surface, product, Sentence.Fill(row.Text, row.Source, status, valueOf));

    /// <summary>The rows that are raised where their condition holds, in the order of the file.</summary>
    /// <param name="about">surface, product or job.</param>
    internal IEnumerable<WarningRow> ByCondition(string about) => byCondition[about];

    internal static WarningTexts Read(string text, WarningTexts? under, ProblemList problems)
    {
        var file = new RuleFile(text, problems);
        var keys = TraitKeys.All
            .Concat(PrepRules.Standard.Traits.Select(trait => trait.Trait))
            .Concat((under?.Traits ?? []).Select(trait => trait.Trait))
            .ToHashSet(StringComparer.Ordinal);
        var traits = DerivedTrait.Read(file, keys);
        var rows = PrepRules.Merge(under?.Rows, file.Rows("warnings", "warning", row => Row(row, keys)), row => row.Id);
        string[] ids = [.. rows.Select(row => row.Id)];
        var judgements = file.Rows("judgements", "judgement", row => Judgement(row, ids));
        var through = file.Single("through", row => row.Texts("reasons").ToArray());
        file.Close();

        return new WarningTexts
        {
            Traits = PrepRules.Merge(under?.Traits, traits, trait => trait.Id),
            Rows = rows,
            Judgements = PrepRules.Merge(under?.Judgements, judgements, row => row.Id),
            Through = through is null ? under?.Through ?? [] : [.. through],
        };
    }

    private static WarningRow Row(RuleRow row, HashSet<string> keys) => new()
    {
        Id = row.Key,
        Code = row.Text("code"),
        About = row.Text("about"),
        Product = row.OptionalText("product"),
        Condition = row.Condition(keys),
        Text = row.Text("text"),
        Source = row.OptionalText("source") ?? "",
        Status = row.OptionalText("status") ?? "",
    };

    private static JudgementRow Judgement(RuleRow row, string[] ids) => new(
        row.Key,
        row.Text("on"),
        Enum.TryParse<Verdict>(row.Text("verdict"), ignoreCase: true, out var verdict) ? verdict : Verdict.Unknown,
        row.Texts("reason"),
        row.Texts("above"),
        row.Names("rows", "warning", ids));
}
