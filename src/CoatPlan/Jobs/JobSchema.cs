using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using CoatPlan.Jobs.Reading;
using CoatPlan.Problems;
using CoatPlan.Quantities;

namespace CoatPlan.Jobs;

/// <summary>Writes the JSON Schema (draft 2020-12) of the job file, from the very table that the reader reads by.</summary>
/// <remarks>
/// An editor completes and checks a job with it. The reader checks more: units, names, and what must agree. Words that a
/// folder of presets may add to are suggested, not enforced.
/// </remarks>
public static class JobSchema
{
    private static readonly JsonSerializerOptions Options = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The schema as JSON text with LF line ends.</summary>
    public static string Write()
    {
        var definitions = new SortedDictionary<string, JsonObject>(StringComparer.Ordinal);
        Define(JobKeys.Job, definitions);
        var root = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "CoatPlan job file, format 1",
            ["$ref"] = Reference(JobKeys.Job),
            ["$defs"] = new JsonObject(definitions.Select(pair => KeyValuePair.Create(pair.Key, (JsonNode?)pair.Value))),
        };
        return root.ToJsonString(Options) + "\n";
    }

    private static void Define(KeyTable table, SortedDictionary<string, JsonObject> definitions)
    {
        if (!definitions.TryAdd(NameOf(table), [])) return;
        var properties = new JsonObject();
        foreach (var key in table.Keys)
        {
            var schema = Of(key.Form, definitions);
            schema["description"] = key.Says;
            if (key.IsRequired && key.Form is KeyedForm) schema["minProperties"] = 1;
            properties[key.Name] = schema;
        }

        var definition = definitions[NameOf(table)];
        definition["type"] = "object";
        definition["properties"] = properties;
        string[] required = [.. table.Keys.Where(key => key.IsRequired).Select(key => key.Name)];
        if (required.Length > 0) definition["required"] = Strings(required);
        definition["additionalProperties"] = false;
        if (JsonNode.Parse(table.Agreeing) is JsonArray { Count: > 0 } agreeing) definition["allOf"] = agreeing;
    }

    private static JsonObject Of(Form form, SortedDictionary<string, JsonObject> definitions)
    {
        switch (form)
        {
            case MapForm map:
                Define(map.Table(), definitions);
                return new() { ["$ref"] = Reference(map.Table()) };
            case KeyedForm keyed:
                return keyed.KeyPattern.Length == 0
                    ? new() { ["type"] = "object", ["additionalProperties"] = Of(keyed.Value, definitions) }
                    : new() { ["type"] = "object", ["additionalProperties"] = Of(keyed.Value, definitions), ["propertyNames"] = new JsonObject { ["pattern"] = keyed.KeyPattern } };
            case ListForm list:
                return ListOf(list.Item, list.Least, definitions);
            case OneOrListForm list:
                return AnyOf(Of(list.Item, definitions), ListOf(list.Item, list.Least, definitions));
            case EitherForm either:
                return AnyOf(Of(either.First, definitions), Of(either.Second, definitions));
            case FlagForm:
                return new() { ["type"] = "boolean" };
            case WholeForm whole:
                return Number("integer", whole.Bounds);
            case NumberForm number:
                return Number("number", number.Bounds);
            case MoneyForm:
                return Number("number", JobRanges.Money);
            case WordForm word:
                return Word(word);
            case WrittenForm written:
                return AnyOf(new() { ["type"] = "string", ["pattern"] = written.Pattern, ["examples"] = Strings([written.Sample]) }, new() { ["type"] = "number" });
            case QuantityForm quantity:
                return Quantity(quantity.Dimension, quantity.Bounds, Sentences.Example(quantity.Dimension));
            case RangeForm range:
                var quantities = Quantity(range.Dimension, range.Bounds, range.Sample);
                if (range.Pattern.Length > 0) quantities["allOf"] = new JsonArray(new JsonObject { ["pattern"] = range.Pattern });
                return quantities;
            case TimeForm:
                return new() { ["type"] = "string", ["pattern"] = TimeForm.Pattern, ["examples"] = Strings([form.Example]) };
            default:
                return new() { ["type"] = Strings(["string", "number", "boolean"]) };
        }
    }

    private static JsonObject ListOf(Form item, int least, SortedDictionary<string, JsonObject> definitions)
    {
        var list = new JsonObject { ["type"] = "array", ["items"] = Of(item, definitions) };
        if (least > 0) list["minItems"] = least;
        return list;
    }

    private static JsonObject Number(string type, Bounds bounds)
    {
        var number = new JsonObject { ["type"] = type };
        number[bounds.LeastIsOut ? "exclusiveMinimum" : "minimum"] = bounds.Least;
        if (double.IsFinite(bounds.Most)) number["maximum"] = bounds.Most;
        return number;
    }

    // A quantity is a text: the schema asks for a figure and something behind it, the reader for the right unit.
    private static JsonObject Quantity(Dimension dimension, Bounds bounds, string sample)
    {
        string unit = dimension == Dimension.Ratio ? "(%|[Pp]er ?cent|[Pp]ct)" : "[^0-9 .,]";
        return new()
        {
            ["type"] = "string",
            ["pattern"] = "[0-9½⅓⅔¼¾⅛⅜⅝⅞] *" + unit,
            ["examples"] = Strings([sample]),
            ["$comment"] = bounds.ToString(),
        };
    }

    private static JsonObject Word(WordForm form)
    {
        var known = new JsonObject { ["enum"] = Strings(form.Words(Vocabulary.Contract)) };
        bool isOpen = !form.Words(Vocabulary.Contract).SequenceEqual(form.Words(Nothing));
        return AnyOf(known, isOpen ? new() { ["type"] = "string" } : new() { ["type"] = "string", ["pattern"] = AnyCase(form.Words(Vocabulary.Contract)) });
    }

    private static readonly Vocabulary Nothing = new()
    {
        Materials = [],
        Finishes = [],
        Conditions = [],
        MaskKinds = [],
        Hazards = [],
        ProductPresets = [],
        Operations = [],
        Near = [],
        Forms = [],
    };

    // Case does not matter in a word, and a hyphen equals a space.
    private static string AnyCase(ImmutableArray<string> words)
    {
        var pattern = new StringBuilder("^(");
        foreach (string word in words)
        {
            if (pattern[^1] != '(') pattern.Append('|');
            foreach (char c in word)
            {
                if (char.IsLetter(c)) pattern.Append('[').Append(char.ToUpperInvariant(c)).Append(char.ToLowerInvariant(c)).Append(']');
                else pattern.Append("[ -]");
            }
        }

        return pattern.Append(")$").ToString();
    }

    private static JsonObject AnyOf(JsonObject first, JsonObject second) => new() { ["anyOf"] = new JsonArray(first, second) };

    private static JsonArray Strings(IEnumerable<string> texts) => [.. texts.Select(text => (JsonNode)text)];

    private static string Reference(KeyTable table) => "#/$defs/" + NameOf(table);

    private static string NameOf(KeyTable table) => JobWords.IdOf(table.What);
}
