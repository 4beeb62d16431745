using NodaTime.Text;
using CoatPlan.Problems;
using CoatPlan.Quantities;

namespace CoatPlan.Presets;

/// <summary>Reads single figures.</summary>
internal static class FigureRows
{
    private static readonly string[] Kinds =
        ["number", "share", "time", "temperature", "difference", "length", "area", "pressure", "speed", "clock"];

    public static Figure Figure(PresetRow row)
    {
        var found = Kinds.Where(row.Has).ToArray();
        if (found.Length != 1) row.Say(found.FirstOrDefault() ?? "number", Sentences.OneOf(row.Where, Kinds, found));
        string kind = found.FirstOrDefault() ?? "";
        var figure = new Figure
        {
            Name = row.Word,
            Means = row.Text("means"),
            Range = row.TextOr("range", ""),
            Provenance = row.Provenance(),
        };
        return kind switch
        {
            "number" => figure with { Number = row.Number(kind, PresetBounds.Number) },
            "share" => figure with { Share = row.Measured(kind, QuantityText.Ratio, value => value.Percent, PresetBounds.Percent) },
            "time" => figure with { Time = row.Measured(kind, QuantityText.Duration, value => value.TotalMinutes, PresetBounds.Time) },
            "temperature" => figure with { Temperature = row.Measured(kind, QuantityText.Temperature, value => value.DegreesCelsius, PresetBounds.Temperature) },
            "difference" => figure with { Difference = row.Measured(kind, QuantityText.TemperatureDelta, value => value.Kelvins, PresetBounds.Difference) },
            "length" => figure with { Length = row.Measured(kind, QuantityText.Length, value => value.Meters, PresetBounds.Length) },
            "area" => figure with { Area = row.Measured(kind, QuantityText.Area, value => value.SquareMeters, PresetBounds.Area) },
            "pressure" => figure with { Pressure = row.Measured(kind, QuantityText.Pressure, value => value.PoundsForcePerSquareInch, PresetBounds.Pressure) },
            "speed" => figure with { Speed = row.Measured(kind, QuantityText.Speed, value => value.MilesPerHour, PresetBounds.Speed) },
            "clock" => figure with { Clock = Clock(row) },
            _ => figure,
        };
    }

    private static LocalTime Clock(PresetRow row)
    {
        var reading = LocalTimePattern.CreateWithInvariantCulture("HH:mm").Parse(row.Text("clock"));
        if (reading.Success) return reading.Value;
        row.Say("clock", Sentences.WrongKind($"`clock` in {row.Where}", $"`{row.Text("clock")}`", "a time of day such as `19:00`"));
        return default;
    }
}
