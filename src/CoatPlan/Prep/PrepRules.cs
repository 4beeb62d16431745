using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Problems;
using UnitsNet;

namespace CoatPlan.Prep;

/// <summary>The rules of the prep sequence: prep.yaml, and what a shop's own file puts over it.</summary>
public sealed record PrepRules
{
    private static readonly Lazy<PrepRules> TheStandard = new(() => Read(RuleFile.Embedded(RuleFiles.Prep), null, new ProblemList(RuleFiles.Prep)));

    /// <summary>The rules that come with the library.</summary>
    public static PrepRules Standard => TheStandard.Value;

    internal ImmutableArray<PrepWait> Waits { get; init; } = [];

    internal ImmutableSortedDictionary<string, ImmutableArray<string>> AfterEvery { get; init; } =
        ImmutableSortedDictionary.Create<string, ImmutableArray<string>>(StringComparer.Ordinal);

    internal PrepMasking Masking { get; init; } = PrepMasking.None;

    /// <summary>Mildest first inside an operation.</summary>
    internal ImmutableArray<PrepWay> Ways { get; init; } = [];

    internal ImmutableArray<DerivedTrait> Traits { get; init; } = [];

    internal ImmutableArray<LayerRule> Between { get; init; } = [];

    /// <summary>In the order of the file.</summary>
    internal ImmutableArray<PrepRule> Rules { get; private init; } = [];

    /// <summary>The same by operation, with the ways of each.</summary>
    internal ImmutableArray<OperationRules> ByOperation { get; private init; } = [];

    /// <summary>The same with a shop's own rows: those with an id or a name that stands here replace it, others are added.</summary>
    /// <param name="text">A file of the shape of prep.yaml; sections may be left out.</param>
    /// <param name="file">Its name, for problems.</param>
    /// <param name="problems">What is wrong with it, in the order of the text; the rules are not to be used unless it is empty.</param>
    public PrepRules With(string text, string file, out ImmutableArray<Problem> problems)
    {
        ArgumentNullException.ThrowIfNull(text);
        var list = new ProblemList(file);
        var rules = Read(text, this, list);
        problems = list.InOrder();
        return rules;
    }

    internal PrepWay? Way(string operation, string? way) =>
        way is null ? null : Ways.FirstOrDefault(row => row.Operation == operation && row.Way == way);

    internal OperationWait Wait(string id, Catalogue catalogue) => Waits.First(wait => wait.Id == id).Taken(catalogue);

    internal static PrepRules Read(string text, PrepRules? under, ProblemList problems)
    {
        var file = new RuleFile(text, problems);
        var waits = Merge(under?.Waits, file.Rows("waits", "wait", Wait), wait => wait.Id);
        var order = file.Rows("order", "order", row => KeyValuePair.Create(row.Key, row.Texts("after-every")));
        var masking = file.Single("masking", Masked) ?? under?.Masking ?? PrepMasking.None;
        var how = masking.How.SetItems(under?.Masking.How ?? masking.How).SetItems(file.Texts("masking-how"));
        string[] waitIds = [.. waits.Select(wait => wait.Id)];
        string[] named = [.. (under?.Ways ?? []).Select(way => $"{way.Operation}/{way.Way}"), .. file.Keys("ways")];
        var ways = Merge(under?.Ways, file.Rows("ways", "way", row => Way(row, waitIds, named)), way => $"{way.Operation}/{way.Way}");
        string[] scuffs = [.. ways.Where(way => way.Operation == "scuff").Select(way => way.Way)];
        var between = file.Rows("between", "class", row => LayerRule.Read(row, scuffs));
        var keys = TraitKeys.All.Concat((under?.Traits ?? []).Select(trait => trait.Trait)).ToHashSet(StringComparer.Ordinal);
        var traits = DerivedTrait.Read(file, keys);
        var rules = file.Rows("rules", "rule", row => Rule(row, ways, waitIds, keys));
        file.Close();

        ImmutableArray<PrepRule> placed = [.. Merge(under?.Rules, rules, rule => rule.Id).Select((rule, place) => rule with { Place = place })];
        return new PrepRules
        {
            Waits = waits,
            AfterEvery = (under?.AfterEvery ?? ImmutableSortedDictionary.Create<string, ImmutableArray<string>>(StringComparer.Ordinal)).SetItems(order),
            Masking = masking with { How = how },
            Ways = ways,
            Traits = Merge(under?.Traits, traits, trait => trait.Id),
            Between = Merge(under?.Between, between, row => row.Class),
            Rules = placed,
            ByOperation = OperationRules.Of(placed, ways),
        };
    }

    /// <summary>A row with a name that is there takes its place; others follow.</summary>
    internal static ImmutableArray<T> Merge<T>(ImmutableArray<T>? under, ImmutableArray<T> over, Func<T, string> nameOf)
    {
        if (under is not { } below)
            return over;
        var byName = over.ToLookup(nameOf, StringComparer.Ordinal);
        var names = below.Select(nameOf).ToHashSet(StringComparer.Ordinal);
        return [.. below.Select(row => byName[nameOf(row)].LastOrDefault(row)), .. over.Where(row => !names.Contains(nameOf(row)))];
    }

    private static PrepWait Wait(RuleRow row)
    {
        var figure = row.OptionalText("figure");
        return new PrepWait(
            row.Key,
            row.Text("kind") switch
            {
                "wash-dry" => WaitKind.WashDry,
                "solvent-flash" => WaitKind.SolventFlash,
                _ => WaitKind.Dwell,
            },
            figure,
            row.Number("minutes") ?? 0,
            row.Text("why"),
            row.OptionalText("source") ?? "",
            row.OptionalText("status") ?? "");
    }

    private static PrepMasking Masked(RuleRow row) => new(
        Length.FromMeters(row.Number("edge-m") ?? 0),
        Length.FromMeters(row.Number("apron-m") ?? 0),
        ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal),
        row.Text("source"),
        row.Text("status"));

    private static PrepWay Way(RuleRow row, string[] waits, string[] ways)
    {
        var operation = row.Key.Split('/')[0];
        return new PrepWay
        {
            Operation = operation,
            Way = row.Key.Split('/')[^1],
            Title = row.Text("title"),
            Rate = row.OptionalText("rate"),
            OnlyBare = row.OptionalText("area") == "bare",
            Dust = row.YesOrNo("dust"),
            Wet = row.Name("wet", $"way of {operation}", [.. ways.Where(way => way.StartsWith(operation + "/", StringComparison.Ordinal)).Select(way => way.Split('/')[^1])]),
            Hot = row.YesOrNo("hot"),
            Wait = row.Name("wait", "wait", waits),
            Grits = row.Texts("grits"),
        };
    }

    private static PrepRule Rule(RuleRow row, ImmutableArray<PrepWay> ways, string[] waits, HashSet<string> keys)
    {
        var operation = row.Name("operation", "operation", Vocabulary.Contract.Operations) ?? row.Text("operation");
        return new PrepRule
        {
            Id = row.Key,
            Operation = operation,
            Way = row.Name("way", $"way of {operation}", [.. ways.Where(way => way.Operation == operation).Select(way => way.Way)]),
            KeepsWet = row.YesOrNo("wet") ?? false,
            Condition = row.Condition(keys),
            Why = row.OptionalText("why"),
            Note = row.OptionalText("note"),
            Wait = row.Name("wait", "wait", waits),
            Source = row.OptionalText("source") ?? "",
            Status = row.Text("status"),
        };
    }
}
