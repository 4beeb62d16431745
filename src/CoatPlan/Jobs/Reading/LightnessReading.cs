using CoatPlan.Quantities;

namespace CoatPlan.Jobs.Reading;

/// <summary>Reads <c>lightness</c>: L* or a word.</summary>
internal static class LightnessReading
{
    /// <returns>Null: absent or wrong.</returns>
    public static Lightness? Read(MapReading map)
    {
        if (map.Find("lightness") is not { } node) return null;
        if (Values.Scalar(node, "`lightness`", "L* from 0 to 100, or a word", map.Context) is not { } scalar) return null;
        if (LabelReading.StartsLikeNumber(scalar))
        {
            var star = Values.Quantity(node, "`lightness`", QuantityText.Number, v => v, JobRanges.LStar, Dimension.None, map.Context);
            return star is null ? null : new() { LStar = star };
        }

        return Values.Word(node, new("lightness", _ => JobWords.Lightness), map.Context) is { } word ? new() { Word = word } : null;
    }
}
