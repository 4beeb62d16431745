using System.Globalization;
using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;
using CoatPlan.Quantities;
using NodaTime.Text;

namespace CoatPlan.Jobs.Reading;

/// <summary>Reads one value from one node; what cannot be read is noted as a problem, and null comes back.</summary>
internal static class Values
{
    private static readonly LocalDateTimePattern TimePattern = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd HH:mm");

    /// <summary>What a node is, in words.</summary>
    public static string Kind(Node node) => node switch
    {
        ListNode => "a list",
        MapNode => "a map",
        TextNode { IsMissing: true } or TextNode { IsNull: true } => "nothing",
        _ => "a single value",
    };

    /// <summary>A scalar that says something.</summary>
    public static TextNode? Scalar(Node node, string what, string due, ReadingContext context)
    {
        if (node is TextNode text)
        {
            if (!text.IsMissing && !text.IsNull) return text;
            context.Problems.Add(node.Mark, Sentences.WrongKind(what, "without a value", due));
            return null;
        }

        context.Problems.Add(node.Mark, Sentences.WrongKind(what, Kind(node), due));
        return null;
    }

    /// <summary>A text that is not blank, trimmed.</summary>
    public static string? Text(Node node, string what, ReadingContext context)
    {
        if (Scalar(node, what, "text", context) is not { } scalar) return null;
        string text = scalar.Text.Trim();
        if (text.Length > 0) return text;
        context.Problems.Add(node.Mark, Sentences.WrongKind(what, "blank", "text"));
        return null;
    }

    /// <summary>A word of a list, in the spelling of the list.</summary>
    public static string? Word(Node node, WordForm form, ReadingContext context)
    {
        var words = form.Words(context.Vocabulary);
        if (Scalar(node, $"the {form.What}", "one of " + string.Join(", ", words), context) is not { } scalar) return null;
        if (JobWords.Find(scalar.Text, words) is { } word) return word;
        string? mend = Nearest.To(JobWords.Fold(scalar.Text), words.Select(JobWords.Fold)) is { } folded ? JobWords.Find(folded, words) : null;
        context.Problems.Add(node.Mark, Sentences.UnknownWord(form.What, scalar.Text, words, mend));
        return null;
    }

    /// <summary><c>true</c> or <c>false</c>.</summary>
    public static bool? Flag(Node node, string what, ReadingContext context)
    {
        if (Scalar(node, what, "`true` or `false`", context) is not { } scalar) return null;
        switch (scalar.Text.ToUpperInvariant())
        {
            case "TRUE":
                return true;
            case "FALSE":
                return false;
            case var other:
                string? mend = other is "YES" or "Y" or "ON" or "1" ? "true" : other is "NO" or "N" or "OFF" or "0" ? "false" : null;
                context.Problems.Add(node.Mark, Sentences.NotABoolean(what, scalar.Text, mend));
                return null;
        }
    }

    /// <summary>A whole number within bounds.</summary>
    public static int? Whole(Node node, string what, Bounds bounds, ReadingContext context)
    {
        string due = "a whole number, " + bounds;
        if (Scalar(node, what, due, context) is not { } scalar) return null;
        var number = QuantityText.Number(scalar.Text);
        if (!number.Ok || number.Value != Math.Floor(number.Value))
        {
            context.Problems.Add(node.Mark, Sentences.NotWhole(what, scalar.Text, bounds));
            return null;
        }

        if (bounds.Hold(number.Value)) return (int)number.Value;
        context.Problems.Add(node.Mark, Sentences.OutOfRange(what, scalar.Text, bounds.ToString()));
        return null;
    }

    /// <summary>A quantity or number within bounds.</summary>
    /// <param name="node">The node.</param>
    /// <param name="what">What it is, for a problem.</param>
    /// <param name="read">Reads it.</param>
    /// <param name="inUnit">Its figure in the unit of the bounds.</param>
    /// <param name="bounds">The bounds.</param>
    /// <param name="due">What the quantity is, for a problem.</param>
    /// <param name="context">Takes problems.</param>
    public static T? Quantity<T>(
        Node node, string what, Func<string, QuantityReading<T>> read, Func<T, double> inUnit, Bounds bounds, Dimension due, ReadingContext context)
        where T : struct
    {
        if (Scalar(node, what, Sentences.Due(due), context) is not { } scalar) return null;
        var reading = read(scalar.Text);
        if (reading.Trouble is { } trouble)
        {
            context.Problems.Add(node.Mark, Sentences.Quantity(what, trouble));
            return null;
        }

        if (bounds.Hold(inUnit(reading.Value))) return reading.Value;
        context.Problems.Add(node.Mark, Sentences.OutOfRange(what, scalar.Text, bounds.ToString()));
        return null;
    }

    /// <summary>A range of quantities, each end within bounds.</summary>
    public static QuantityRange<T>? Range<T>(
        Node node, string what, Func<string, QuantityReading<QuantityRange<T>>> read, Func<T, double> inUnit, RangeForm form, ReadingContext context)
        where T : struct
    {
        if (Scalar(node, what, $"a range such as `{form.Sample}`", context) is not { } scalar) return null;
        var reading = read(scalar.Text);
        if (reading.Trouble is { } trouble)
        {
            context.Problems.Add(node.Mark, Sentences.Quantity(what, trouble));
            return null;
        }

        var range = reading.Value;
        bool within = (range.Least is not { } least || form.Bounds.Hold(inUnit(least))) && (range.Most is not { } most || form.Bounds.Hold(inUnit(most)));
        if (within) return range;
        context.Problems.Add(node.Mark, Sentences.OutOfRange(what, scalar.Text, form.Bounds.ToString()));
        return null;
    }

    /// <summary>A local date and time, <c>YYYY-MM-DD HH:MM</c>.</summary>
    public static LocalDateTime? Time(Node node, string what, ReadingContext context)
    {
        if (Scalar(node, what, "a date and time such as `2027-05-14 16:00`", context) is not { } scalar) return null;
        string text = scalar.Text.Trim();
        string plain = text.Length > 10 && text[10] is 'T' or 't' ? text[..10] + " " + text[11..] : text;
        var parsed = TimePattern.Parse(plain);
        if (parsed.Success && JobRanges.Year.Hold(parsed.Value.Year)) return parsed.Value;
        bool shaped = plain.Length == 16 && plain.Select((c, i) => i switch
        {
            4 or 7 => c == '-',
            10 => c == ' ',
            13 => c == ':',
            _ => char.IsAsciiDigit(c),
        }).All(fits => fits);
        var problem = parsed.Success ? Sentences.OutOfRange(what, text, "a year from " + JobRanges.Year)
            : shaped ? Sentences.NoSuchDate(what, text)
            : Sentences.NotATime(what, text);
        context.Problems.Add(node.Mark, problem);
        return null;
    }

    /// <summary>The items of a list.</summary>
    public static ImmutableArray<Node> Items(Node node, string what, string due, ReadingContext context)
    {
        if (node is ListNode list) return list.Items;
        context.Problems.Add(node.Mark, Sentences.WrongKind(what, Kind(node), due));
        return [];
    }

    /// <summary>The items of a list, or the one thing that stands in its place.</summary>
    public static ImmutableArray<Node> OneOrItems(Node node) => node is ListNode list ? list.Items : [node];

    /// <summary>A number as text, the same on every machine.</summary>
    public static string Written(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);
}
