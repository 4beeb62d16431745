using System.Collections;
using System.Reflection;
using System.Text.RegularExpressions;
using CoatPlan.Plans;
using CoatPlan.Quantities;
using CoatPlan.Sheets.Content;
using CoatPlan.Supplies;

namespace CoatPlan.Tests.Sheets;

/// <summary>Every figure of a plan as it may be printed, with its unit: what is left of a sheet's text once these are struck out holds no digit.</summary>
internal sealed partial class PlanPhrases
{
    // Limits that stand in the sentences of the sheets themselves.
    private static readonly string[] s_fixed = ["10 % of the lower explosive limit"];

    private readonly SortedSet<string> quoted = new(Longest);
    private readonly SortedSet<string> written = new(Longest);
    private readonly HashSet<string> alone = new(StringComparer.Ordinal);
    private readonly HashSet<string> stations;
    private readonly PlanWords words;

    public PlanPhrases(Plan plan)
    {
        words = new PlanWords(plan);
        stations = [.. plan.Steps.Select(step => step.Station).OfType<int>().Select(PlanWords.Count)];
        alone.UnionWith(stations);
        foreach (var text in s_fixed)
            quoted.Add(text);
        Walk(plan, "");
        foreach (var surface in plan.Surfaces)
            Add(surface);
        foreach (var layer in plan.Layers)
            written.Add(layer.Coats == 1 ? "1 coat of" : $"{layer.Coats} coats of");
        foreach (var step in plan.Steps.Where(step => step.Coat is not null))
            written.Add($"{step.Coat}/{step.Of ?? step.Coat}");
        written.Add($"mixing factor {QuantityFormat.Decimals(plan.Air.Mixing, 1)}");
        foreach (var supply in plan.Supplies)
            Add(supply);
        foreach (var item in plan.Consumables)
            Add(item);
        AddSum(plan);
    }

    private static Comparer<string> Longest { get; } = Comparer<string>.Create((one, other) => one.Length == other.Length ? string.CompareOrdinal(one, other) : other.Length.CompareTo(one.Length));

    /// <summary>What is left of a text that the plan does not account for; null where nothing with a digit is.</summary>
    public string? Left(string text)
    {
        if (!text.Any(char.IsAsciiDigit) || alone.Contains(text))
            return null;

        var left = quoted.Aggregate(text, (rest, phrase) => rest.Replace(phrase, " ", StringComparison.Ordinal));
        left = Stations().Replace(left, run => Digits().Matches(run.Value).All(number => stations.Contains(number.Value)) ? " " : run.Value);
        foreach (var phrase in written.Where(phrase => left.Contains(phrase, StringComparison.Ordinal)))
            left = Regex.Replace(left, $@"(?<![\d.,:]){Regex.Escape(phrase)}(?![\d]|[.,:]\d)", " ");
        return left.Any(char.IsAsciiDigit) ? $"{left.Trim()} | {text}" : null;
    }

    private void Walk(object? value, string name)
    {
        switch (value)
        {
            case null or bool or int or Enum:
                break;
            case string text:
                Quote(text);
                break;
            case double number:
                foreach (var phrase in Written(number, name))
                    written.Add(phrase);
                break;
            case decimal amount:
                written.UnionWith([words.Money(amount), words.Figure(amount)]);
                break;
            case LocalDateTime time:
                written.UnionWith([PlanWords.Moment(time), PlanWords.Clock(time), PlanWords.Day(time.Date), PlanWords.DayAndMonth(time.Date)]);
                break;
            case IEnumerable many:
                foreach (var one in many)
                    Walk(one, name);
                break;
            default:
                foreach (var property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => property.GetIndexParameters().Length == 0))
                    Walk(property.GetValue(value), property.Name);
                break;
        }
    }

    // A reason and a caution may be printed without how their source was read.
    private void Quote(string text)
    {
        quoted.UnionWith(((string[])[text, WhyLine.Of(text), .. text.Split([';', ','], StringSplitOptions.TrimEntries)]).Where(part => part.Any(char.IsAsciiDigit)));
    }

    private IEnumerable<string> Written(double number, string name) => name switch
    {
        _ when name.EndsWith("AboveDewC", StringComparison.Ordinal) => [words.Difference(number)],
        _ when name.EndsWith("M3PerMin", StringComparison.Ordinal) => [words.Flow(number)],
        _ when name.EndsWith("Min", StringComparison.Ordinal) => [PlanWords.Minutes(number), PlanWords.Minutes(Math.Ceiling(number))],
        _ when name.EndsWith("M2", StringComparison.Ordinal) => [words.Area(number)],
        _ when name.EndsWith("M3", StringComparison.Ordinal) => [words.Room(number)],
        _ when name.EndsWith("Ml", StringComparison.Ordinal) => [words.Liquid(number)],
        _ when name.EndsWith('C') || name.EndsWith("CLow", StringComparison.Ordinal) => [words.Temperature(number), $"{words.Degrees(number)} to"],
        nameof(PlanPasses.FanM) or nameof(PlanPasses.SpacingM) or nameof(PlanPasses.DistanceM) => [words.ByHand(number)],
        _ when name.EndsWith('M') => [words.Length(number)],
        _ when name.EndsWith("Ratio", StringComparison.Ordinal) || name.StartsWith("Humidity", StringComparison.Ordinal) => [PlanWords.Percent(number)],
        "H" or "LabourH" => [QuantityFormat.Hours(Duration.FromHours(number))],
        _ => [],
    };

    private void Add(PlanSurface surface)
    {
        written.Add($"({surface.Count})");
        written.UnionWith(Enumerable.Range(1, surface.Count).Select(piece => $"Piece {piece} of {surface.Count}"));
        if (surface.Tag is not { } tag)
            return;

        written.Add($"tag {tag}");
        alone.Add(PlanWords.Count(tag));
    }

    private void Add(PlanSupply supply)
    {
        var cans = supply.Cans == 1 ? "1 can" : $"{supply.Cans} cans";
        alone.UnionWith([$"{supply.Cans}", $"{supply.Cans} ({supply.CansLow} to {supply.CansHigh})", supply.Buy == 1 ? "1 can" : $"{supply.Buy} cans"]);
        alone.Add($"{(supply.Buy == 1 ? "1 can" : $"{supply.Buy} cans")}: {Packs(supply.Packs)} of {supply.Pack}");
        // What the shelf gives is the one difference that is told: in all, less what is bought.
        quoted.Add($"{supply.Name}: {supply.Cans - supply.Buy} of {cans}");
    }

    private void Add(PlanConsumable item)
    {
        var amount = Amount(item.Amount);
        alone.UnionWith([amount, $"{amount}, out of a pack above", $"{amount}: {Packs(item.Packs)} of {item.Pack}"]);
        quoted.Add($"{item.Item}: {Number(item.Needed - item.Amount)} of {Amount(item.Needed)}");

        string Number(double amount) => QuantityFormat.Decimals(UnitWords.In(amount, item.Unit, words.Plan.Units).Amount, 2);

        string Amount(double amount) => $"{Number(amount)} {UnitWords.Behind(UnitWords.In(amount, item.Unit, words.Plan.Units).Amount, UnitWords.In(amount, item.Unit, words.Plan.Units).Unit)}";
    }

    // The one sum that is told: of the prices on the list, whole to the cent.
    private void AddSum(Plan plan)
    {
        decimal?[] prices = [.. plan.Supplies.Where(supply => supply.Buy > 0).Select(supply => supply.Price), .. plan.Consumables.Where(item => item.Amount > 0).Select(item => item.Price)];
        var unknown = prices.Count(price => price is null);
        quoted.Add($"Known prices add to {words.Money(prices.Sum() ?? 0)}");
        quoted.UnionWith([$"the price of {unknown} line is", $"the prices of {unknown} lines are"]);
    }

    private static string Packs(int packs) => packs == 1 ? "1 pack" : $"{packs} packs";

    [GeneratedRegex(@"\b[Ss]tations? \d+(?:(?:, | and | to )\d+)*")]
    private static partial Regex Stations();

    [GeneratedRegex(@"\d+")]
    private static partial Regex Digits();
}
