using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace CoatPlan.App.Desk.Asking;

/// <summary>The text of a job from what was answered; what was not answered yet is filled in, so that every answer can be checked as it comes.</summary>
internal static partial class GuideText
{
    private static readonly GuideCan AnyCan = new("black", "underhood-black-aerosol");

    private static readonly GuidePart AnyPart = new() { Name = "Piece" };

    /// <summary>The text.</summary>
    /// <param name="draft">What is known.</param>
    public static string Of(GuideDraft draft)
    {
        var text = new StringBuilder();
        var cans = draft.Cans ?? [AnyCan];
        var parts = draft.Parts ?? [AnyPart];
        var systems = SystemsOf(parts, cans);
        text.Append("# Made by asking. Every answer can be changed, here or on the screen.\n");
        text.Append("# The product's label and safety data sheet win over everything that is planned from this.\n");
        text.Append("coatplan: 1\n");
        text.Append(CultureInfo.InvariantCulture, $"job: {Quoted(draft.Name ?? "Job")}\n");
        text.Append(CultureInfo.InvariantCulture, $"units: {draft.Units ?? "us"}\n");
        text.Append(CultureInfo.InvariantCulture, $"start: {Quoted(draft.Start ?? "2027-05-14 16:00")}\n");
        if (draft.FinishBy is { Length: > 0 } finish)
            text.Append(CultureInfo.InvariantCulture, $"finish-by: {Quoted(finish)}\n");
        Place(text, draft);
        Crew(text, draft);
        text.Append("\nproducts:\n");
        foreach (var can in cans)
            text.Append(CultureInfo.InvariantCulture, $"  {Quoted(can.Key)}: {{preset: {Quoted(can.Preset)}{(can.Price is { Length: > 0 } price ? $", package: {{price: {Quoted(price)}}}" : "")}}}\n");
        text.Append("\nsystems:                    # layers, first to last\n");
        foreach (var (key, layers) in systems.Values.DistinctBy(system => system.Key))
            text.Append(CultureInfo.InvariantCulture, $"  {key}: [{string.Join(", ", layers.Select(Layer))}]\n");
        text.Append("\nsurfaces:\n");
        foreach (var part in parts)
            Surface(text, part, systems[LayersOf(part, cans)].Key);
        if (draft.Labour is { Length: > 0 } labour)
            text.Append(CultureInfo.InvariantCulture, $"\nprices:\n  labour: {Quoted(labour)}\n{(draft.Markup is { Length: > 0 } markup ? $"  markup: {Quoted(markup)}\n" : "")}");
        return text.ToString();
    }

    private static void Place(StringBuilder text, GuideDraft draft)
    {
        text.Append("\nplace:\n");
        if (draft.Outdoors == true)
            text.Append("  outdoors: true\n");
        else
            text.Append(CultureInfo.InvariantCulture, $"  room: {(draft.Room is [var length, var width, var height] ? $"{{length: {Quoted(length)}, width: {Quoted(width)}, height: {Quoted(height)}}}" : "{length: 22 ft, width: 20 ft, height: 9 ft}")}\n");
        if (draft.Exhaust is { Length: > 0 } exhaust)
            text.Append(CultureInfo.InvariantCulture, $"  exhaust: {Quoted(exhaust)}\n");
        text.Append(CultureInfo.InvariantCulture, $"  weather:\n    {Weather(draft)}\n");
    }

    private static string Weather(GuideDraft draft) => (draft.Weather, draft.WeatherSays) switch
    {
        ("steady", [var air, var humidity]) => $"steady: {{air: {Quoted(air)}, humidity: {Quoted(humidity)}}}",
        ("daily", [var low, var high, var dew]) => $"daily: {{low: {Quoted(low)}, high: {Quoted(high)}, dew-point: {Quoted(dew)}}}",
        ("hours", [var file]) => $"hours: {Quoted(file)}",
        _ => "steady: {air: 70 °F, humidity: 50 %}",
    };

    private static void Crew(StringBuilder text, GuideDraft draft)
    {
        text.Append(CultureInfo.InvariantCulture, $"\ncrew:\n  people: {Quoted(draft.People ?? "1")}\n");
        if (draft.Stations is { } stations && stations != "1")
            text.Append(CultureInfo.InvariantCulture, $"  stations: {Quoted(stations)}\n");
        text.Append("  hours:\n");
        foreach (var (days, spans) in draft.Hours ?? [("Mon-Sun", ["08:00-18:00"])])
            text.Append(CultureInfo.InvariantCulture, $"    {Quoted(days)}: {(spans is [var only] ? Quoted(only) : $"[{string.Join(", ", spans.Select(Quoted))}]")}\n");
    }

    private static void Surface(StringBuilder text, GuidePart part, string system)
    {
        text.Append(CultureInfo.InvariantCulture, $"  - name: {Quoted(part.Name ?? "Piece")}\n");
        if (part.Count is { } count && count != "1")
            text.Append(CultureInfo.InvariantCulture, $"    count: {Quoted(count)}\n");
        text.Append(CultureInfo.InvariantCulture, $"    material: {Quoted(part.Material ?? "steel")}\n");
        text.Append(CultureInfo.InvariantCulture, $"    finish: {Quoted(part.Finish ?? "unknown")}\n");
        text.Append(CultureInfo.InvariantCulture, $"    condition: [{string.Join(", ", (part.Conditions ?? ["sound"]).Select(Quoted))}]\n");
        text.Append(CultureInfo.InvariantCulture, $"    area: {Quoted(part.Area ?? "1 ft2")}\n");
        if (part.Piece is { Form: not "panel" } piece)
            text.Append(CultureInfo.InvariantCulture, $"    form: {piece.Form}\n");
        if (part.Stays == true)
            text.Append("    stays: true\n");
        text.Append(CultureInfo.InvariantCulture, $"    system: {system}\n");
    }

    // Parts on which the same cans go in the same order share a system.
    private static Dictionary<string, (string Key, ImmutableArray<string> Layers)> SystemsOf(ImmutableArray<GuidePart> parts, ImmutableArray<GuideCan> cans)
    {
        var systems = new Dictionary<string, (string, ImmutableArray<string>)>(StringComparer.Ordinal);
        foreach (var layers in parts.Select(part => LayersOf(part, cans)).Distinct(StringComparer.Ordinal))
            systems[layers] = ($"system-{systems.Count + 1}", [.. layers.Split('\n')]);
        return systems;
    }

    private static string LayersOf(GuidePart part, ImmutableArray<GuideCan> cans) => part.Layers.IsEmpty ? cans[0].Key : string.Join('\n', part.Layers);

    private static string Layer(string layer) =>
        $"{{product: {Quoted(GuidePart.CanOf(layer))}{(layer.EndsWith(GuidePart.BareOnly, StringComparison.Ordinal) ? ", only: bare" : "")}}}";

    private static string Quoted(string text) => PlainText().IsMatch(text)
        ? text
        : $"\"{string.Concat(text.Where(character => !char.IsControl(character))).Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";

    [GeneratedRegex(@"^(?!(?i:null)$)[\p{L}\p{N}](?:[\p{L}\p{N} ._/°²³%+&-]|:(?=\p{N}))*(?<! )$")]
    private static partial Regex PlainText();
}
