using YamlDotNet.RepresentationModel;

namespace CoatPlan.Tests.Validator;

/// <summary>What the job file says of a product, and under it what the preset file says of its class: data alone, read again without the program's code.</summary>
internal sealed record LabelView
{
    /// <summary>Whether the product is of a class that the preset file does not know, so that what the job leaves out is not judged.</summary>
    public required bool HasPreset { get; init; }
    public required bool HasTable { get; init; }
    public required ImmutableDictionary<string, double> Minutes { get; init; }
    public required ImmutableArray<Window> Recoat { get; init; }
    public required ImmutableArray<Window> Topcoat { get; init; }
    public string? Missed { get; init; }
    public double? CoversM2 { get; init; }
    public required bool StatesSolids { get; init; }
    public double? Price { get; init; }
    public required bool HasPack { get; init; }
    public Limits? Air { get; init; }
    public Limits? Surface { get; init; }
    public Limits? Humidity { get; init; }
    public required double AboveDewC { get; init; }
    public required double AtC { get; init; }
    public string? Drying { get; init; }
    public string? Method { get; init; }

    public double? Stage(string stage) => Minutes.TryGetValue(stage, out double minutes) ? minutes : null;

    /// <summary>The windows for the next coat; null where the preset has the word.</summary>
    public ImmutableArray<Window>? WindowsFor(bool sameProduct) => (sameProduct, Recoat.Length, Topcoat.Length, HasPreset) switch
    {
        (true, > 0, _, _) => Recoat,
        (false, _, > 0, _) => Topcoat,
        (false, > 0, _, false) => Recoat,
        _ => null,
    };

    /// <summary>Reads a product.</summary>
    /// <param name="said">What the job says of it.</param>
    /// <param name="classes">The rows of the preset file, by word.</param>
    public static LabelView Read(YamlMappingNode said, YamlMappingNode? classes)
    {
        var known = said.Text("preset") is { } word ? classes?.Map(word) : null;
        bool preset = said.Text("preset") is not null && known is null;
        var node = known is null ? said : Over(said, known);
        var table = node.List("times-at").OfType<YamlMappingNode>().ToArray();
        var times = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (string stage in (string[])["dust", "touch", "tape", "handle", "through", "service"])
        {
            // What the label says at its own conditions is the least that any wait takes; the rows of its table only lengthen it.
            double[] rows = [.. table.Select(row => Reading.Minutes(row.Text(stage))).OfType<double>()];
            if ((Reading.Minutes(node.Map("times")?.Text(stage)) ?? (rows.Length > 0 ? rows.Min() : null)) is { } stated)
            {
                times[stage] = stated;
            }
        }

        if (!preset && times.TryGetValue("touch", out double touch))
        {
            times.TryAdd("dust", touch);
        }

        if (!preset && times.TryGetValue("handle", out double handle))
        {
            times.TryAdd("tape", handle);
        }

        double fromTouch = times.GetValueOrDefault("touch");
        var limits = node.Map("limits") ?? [];
        return new LabelView
        {
            HasPreset = preset,
            HasTable = table.Length > 0,
            Minutes = times.ToImmutableDictionary(),
            Recoat = [.. Windows(node, "recoat", fromTouch)],
            // Whether the preset's topcoat or the job's own recoat fills in here the contract leaves open, so both pass.
            Topcoat =
            [
                .. Windows(node, "topcoat", fromTouch),
                .. known is not null && said.At("topcoat") is null && said.At("recoat") is not null ? Windows(said, "recoat", fromTouch) : [],
            ],
            Missed = node.Text("missed"),
            CoversM2 = Reading.SquareMetres(node.Text("covers")),
            StatesSolids = node.Text("solids") is not null,
            Price = Reading.Number(said.Map("package")?.Text("price")),
            HasPack = node.Map("package")?.Text("pack") is not null,
            Air = Between(limits.Text("air"), Reading.Celsius),
            Surface = Between(limits.Text("surface"), Reading.Celsius),
            Humidity = Between(limits.Text("humidity"), Reading.Share),
            // Presets may say 5 °F, which is a little less than the default of 3 °C.
            AboveDewC = Reading.CelsiusDifference(limits.Text("above-dew")) ?? (preset ? 5 / 1.8 : 3),
            AtC = Reading.Celsius(node.Map("at")?.Text("air")) ?? (70 - 32) / 1.8,
            Drying = node.Text("drying")?.ToLowerInvariant(),
            Method = node.Text("method")?.ToLowerInvariant(),
        };
    }

    /// <summary>The job's keys over those of the class; maps key by key.</summary>
    private static YamlMappingNode Over(YamlMappingNode said, YamlMappingNode known)
    {
        var merged = new YamlMappingNode();
        foreach (string key in said.Entries().Concat(known.Entries()).Select(entry => entry.Key).Distinct())
        {
            merged.Add(key, key is "times" or "limits" && said.Map(key) is { } own && known.Map(key) is { } below ? Over(own, below) : said.At(key) ?? known.At(key)!);
        }

        return merged;
    }

    private static IEnumerable<Window> Windows(YamlMappingNode node, string key, double touch)
    {
        var texts = node.List(key).OfType<YamlScalarNode>().Select(item => item.Value).Append(node.Text(key));
        foreach (string text in texts.OfType<string>())
        {
            string trimmed = text.Trim();
            if (trimmed.StartsWith("after ", StringComparison.OrdinalIgnoreCase))
            {
                yield return new Window(Reading.Minutes(trimmed[6..]) ?? 0, null);
            }
            else if (trimmed.StartsWith("within ", StringComparison.OrdinalIgnoreCase))
            {
                yield return new Window(touch, Reading.Minutes(trimmed[7..]));
            }
            else if (Reading.Ends(trimmed) is { } ends)
            {
                yield return new Window(Reading.Minutes(ends.Low) ?? 0, Reading.Minutes(ends.High));
            }
        }
    }

    /// <summary>A range, or one figure that is the most.</summary>
    private static Limits? Between(string? text, Func<string?, double?> read) =>
        Reading.Ends(text) is { } ends ? new Limits(read(ends.Low), read(ends.High)) : read(text) is { } most ? new Limits(null, most) : null;
}
