using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;
using CoatPlan.Quantities;

namespace CoatPlan.Jobs.Reading;

/// <summary>Reads how much of a thing there is: <c>2</c>, <c>2 cans</c>, <c>6 oz</c>, <c>60 ft</c>.</summary>
internal static class AmountReading
{
    private const string Due = "a number of packages such as `2`, or a mass, a volume, a length or an area";

    private static readonly string[] Counted =
        ["can", "cans", "package", "packages", "pack", "packs", "piece", "pieces", "pc", "pcs", "sheet", "sheets", "roll", "rolls", "pair", "pairs"];

    /// <returns>Null: wrong, which is noted.</returns>
    public static Amount? Read(Node node, string what, ReadingContext context)
    {
        if (Values.Scalar(node, what, Due, context) is not { } scalar) return null;
        string text = scalar.Text.Trim();
        string? counted = Counted.FirstOrDefault(word => text.EndsWith(" " + word, StringComparison.OrdinalIgnoreCase));
        if (counted is not null) text = text[..^counted.Length].TrimEnd();
        var bounds = JobRanges.Amount;
        var amount = QuantityText.DimensionOf(text) switch
        {
            Dimension.Mass => QuantityText.Mass(text) is { Ok: true } mass && bounds.Hold(mass.Value.Grams) ? new Amount { Mass = mass.Value } : null,
            Dimension.Volume => QuantityText.Volume(text) is { Ok: true } volume && bounds.Hold(volume.Value.Milliliters) ? new() { Volume = volume.Value } : null,
            Dimension.Length => QuantityText.Length(text) is { Ok: true } length && bounds.Hold(length.Value.Meters) ? new() { Length = length.Value } : null,
            Dimension.Area => QuantityText.Area(text) is { Ok: true } area && bounds.Hold(area.Value.SquareMeters) ? new() { Area = area.Value } : null,
            Dimension.None => QuantityText.Number(text) is { Ok: true } count && bounds.Hold(count.Value) ? new() { Count = count.Value } : null,
            _ => null,
        };
        if (amount is null) context.Problems.Add(node.Mark, Sentences.WrongKind(what, $"`{scalar.Text}`", Due));
        return amount;
    }
}
