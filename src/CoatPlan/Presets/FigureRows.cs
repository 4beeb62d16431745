using System.Globalization;
using CoatPlan.Problems;
using CoatPlan.Quantities;
using UnitsNet;

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
            "share" => figure with { Share = row.Percent(kind, PresetBounds.Percent) },
            "time" => figure with { Time = row.Time(kind) },
            "temperature" => figure with { Temperature = row.Temperature(kind) },
            "difference" => figure with { Difference = row.Difference(kind) },
            "length" => figure with { Length = row.Length(kind) },
            "area" => figure with { Area = row.Area(kind) },
            "pressure" => figure with { Pressure = Pressure(row, kind) },
            "speed" => figure with { Speed = Speed(row, kind) },
            "clock" => figure with { Clock = Clock(row) },
            _ => figure,
        };
    }

    private static Pressure Pressure(PresetRow row, string key)
    {
        bool isPlain = PlainFigure.Split(row.PlainText(key) ?? "", out double number, out string unit)
            && unit == "psi" && PresetBounds.Pressure.Hold(number);
        return isPlain
            ? UnitsNet.Pressure.FromPoundsForcePerSquareInch(number)
            : row.Measured(key, QuantityText.Pressure, value => value.PoundsForcePerSquareInch, PresetBounds.Pressure);
    }

    private static Speed Speed(PresetRow row, string key)
    {
        bool isPlain = PlainFigure.Split(row.PlainText(key) ?? "", out double number, out string unit)
            && unit == "mph" && PresetBounds.Speed.Hold(number);
        return isPlain
            ? UnitsNet.Speed.FromMilesPerHour(number)
            : row.Measured(key, QuantityText.Speed, value => value.MilesPerHour, PresetBounds.Speed);
    }

    private static LocalTime Clock(PresetRow row)
    {
        string text = row.Text("clock");
        int colon = text.IndexOf(':', StringComparison.Ordinal);
        bool areNumbers = int.TryParse(text.AsSpan(0, Math.Max(0, colon)), NumberStyles.None, CultureInfo.InvariantCulture, out int hour)
            & int.TryParse(text.AsSpan(colon + 1), NumberStyles.None, CultureInfo.InvariantCulture, out int minute);
        if (areNumbers && hour is >= 0 and < 24 && minute is >= 0 and < 60) return new(hour, minute);
        row.Say("clock", Sentences.WrongKind($"`clock` in {row.Where}", $"`{text}`", "a time of day such as `19:00`"));
        return default;
    }
}
