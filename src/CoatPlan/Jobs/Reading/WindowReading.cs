using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;
using CoatPlan.Quantities;

namespace CoatPlan.Jobs.Reading;

/// <summary>Reads recoat windows: <c>10 min-1 h</c>, <c>after 24 h</c>, <c>within 30 min</c>.</summary>
internal static class WindowReading
{
    /// <summary>The windows under a key; a list is either/or.</summary>
    public static ImmutableArray<RecoatWindow> Read(MapReading map, string key)
    {
        if (map.Find(key) is not { } node) return [];
        if (node is ListNode { Items.IsEmpty: true }) map.Note(key, Sentences.EmptyList(MapReading.Named(key), JobKeys.WindowDue));
        var windows = ImmutableArray.CreateBuilder<RecoatWindow>();
        foreach (var item in Values.OneOrItems(node))
        {
            if (Values.Scalar(item, MapReading.Named(key), JobKeys.WindowDue, map.Context) is not { } scalar) continue;
            foreach (string part in scalar.Text.Split([", ", " or "], StringSplitOptions.TrimEntries))
            {
                if (Window(part, scalar, MapReading.Named(key), map.Context) is { } window) windows.Add(window);
            }
        }

        return windows.ToImmutable();
    }

    private static RecoatWindow? Window(string text, TextNode node, string what, ReadingContext context)
    {
        if (Behind(text, "after") is { } least) return Duration(least, node, what, context) is { } from ? new(from, null, FromTouch: false) : null;
        if (Behind(text, "within") is { } most) return Duration(most, node, what, context) is { } to ? new(null, to, FromTouch: true) : null;
        var range = QuantityText.DurationRange(text);
        if (range.Trouble is { Kind: not QuantityTroubleKind.NotANumber } trouble)
        {
            context.Problems.Add(node.Mark, Sentences.Quantity(what, trouble));
            return null;
        }

        bool isSingle = range.Ok && (range.Value.Least is null || range.Value.Most is null || range.Value.Least == range.Value.Most);
        if (!range.Ok || isSingle)
        {
            context.Problems.Add(node.Mark, Sentences.NotAWindow(what, text, isSingle ? $"after {text}" : null));
            return null;
        }

        bool holds = JobRanges.Time.Hold(range.Value.Least!.Value.TotalDays) && JobRanges.Time.Hold(range.Value.Most!.Value.TotalDays);
        if (holds) return new(range.Value.Least, range.Value.Most, FromTouch: false);
        context.Problems.Add(node.Mark, Sentences.OutOfRange(what, text, JobRanges.Time.ToString()));
        return null;
    }

    private static Duration? Duration(string text, TextNode node, string what, ReadingContext context)
    {
        var reading = QuantityText.Duration(text);
        if (reading.Trouble is { } trouble) context.Problems.Add(node.Mark, Sentences.Quantity(what, trouble));
        else if (JobRanges.Time.Hold(reading.Value.TotalDays)) return reading.Value;
        else context.Problems.Add(node.Mark, Sentences.OutOfRange(what, text, JobRanges.Time.ToString()));
        return null;
    }

    private static string? Behind(string text, string word)
    {
        bool begins = text.StartsWith(word, StringComparison.OrdinalIgnoreCase) && text.Length > word.Length && char.IsWhiteSpace(text[word.Length]);
        return begins ? text[word.Length..].Trim() : null;
    }
}
