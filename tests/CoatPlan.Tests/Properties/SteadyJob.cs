using System.Globalization;

namespace CoatPlan.Tests.Properties;

/// <summary>A label of a steady job, in minutes at 70 °F.</summary>
internal sealed record SteadyLabel(int Touch, int Handle, int Open, int Close, int After)
{
    /// <summary>Least and most gaps for the next coat; no most where the window stays open.</summary>
    public ImmutableArray<(int Open, int? Close)> Windows => Close == 0 ? [(Open, null)] : [(Open, Close), (After, null)];

    public string Text => string.Create(
        CultureInfo.InvariantCulture,
        $"{{package: {{net: 12 oz}}, covers: 13 ft2, drying: solvent, times: {{touch: {Touch} min, tape: {Handle} min, handle: {Handle} min, through: {After} min}}, recoat: {(Close == 0 ? $"after {Open} min" : $"[{Open} min-{Close} min, after {After} min]")}, limits: {{air: 50-90 °F, humidity: 85 %}}}}");
}

/// <summary>
/// A realistic job in constant air that a model of a page can hold: loose bare steel parts in one or two systems, one or two people, evenings, weekends or periods.
/// </summary>
internal sealed record SteadyJob
{
    private static readonly string[] s_hours =
    [
        "Mon-Sun: 08:00-18:00", "Mon-Sun: [08:00-10:00, 10:30-12:00, 13:00-15:00]", "Mon-Fri: 17:00-21:00, Sat-Sun: 09:00-17:00",
        "Mon-Sun: [09:00-09:50, 10:00-10:50, 11:00-11:50, 13:00-13:50]", "Mon-Sun: 18:30-20:00", "Mon-Sun: 21:00-01:00",
    ];

    public required int Fahrenheit { get; init; }

    public required int People { get; init; }

    public required int Spots { get; init; }

    public int? Rack { get; init; }

    public required ImmutableArray<SteadyLabel> Labels { get; init; }

    /// <summary>For each system, its layers: the label and the number of coats.</summary>
    public required ImmutableArray<ImmutableArray<(int Label, int Coats)>> Systems { get; init; }

    /// <summary>For each surface, its system and its pieces.</summary>
    public required ImmutableArray<(int System, int Count)> Surfaces { get; init; }

    public required string Hours { get; init; }

    /// <summary>How many times as long as at 70 °F a film takes: the rate doubles with 10 °C, and heat promises nothing.</summary>
    public double Slowness => Math.Max(1, Math.Pow(2, (70 - Fahrenheit) / 1.8 / 10));

    public string Text => $$"""
        coatplan: 1
        job: Steady
        start: 2027-05-14 08:00
        place: {volume: 4000 ft3, exhaust: 800 cfm, spray-spots: {{Spots}}{{(Rack is { } rack ? $", rack: {rack}" : "")}}, weather: {steady: {air: {{Fahrenheit}} °F, humidity: 50 %} } }
        crew: {people: {{People}}, hours: { {{Hours}} } }
        products:
        {{Lines(Labels.Select((label, i) => $"  p{i}: {label.Text}"))}}
        systems:
        {{Lines(Systems.Select((layers, i) => $"  s{i}: [{string.Join(", ", layers.Select(layer => $"{{product: p{layer.Label}, coats: {layer.Coats}}}"))}]"))}}
        surfaces:
        {{Lines(Surfaces.Select((surface, i) => $"  - {{name: Part {i + 1}, material: steel, finish: bare, area: {1 + i} ft2, relief: 1, count: {surface.Count}, system: s{surface.System}}}"))}}

        """;

    /// <summary>The job of a seed: 13 to 22 activities.</summary>
    public static SteadyJob Draw(int seed)
    {
        var luck = new Random(seed);
        var labels = Enumerable.Range(0, 2).Select(_ => Label(luck)).ToImmutableArray();
        var two = luck.Next(3) == 0;
        ImmutableArray<ImmutableArray<(int, int)>> systems = two
            ? [[(0, 1)], [(1, 1 + luck.Next(2))]]
            : luck.Next(2) == 0 ? [[(0, 1 + luck.Next(4))]] : [[(0, 1 + luck.Next(2)), (1, 1 + luck.Next(2))]];
        var surfaces = Enumerable.Range(0, systems.Length + luck.Next(2)).Select(i => (System: i % systems.Length, Count: 1 + luck.Next(2))).ToImmutableArray();
        return new SteadyJob
        {
            Fahrenheit = luck.Next(58, 74),
            People = 1 + luck.Next(2),
            Spots = 1 + luck.Next(2),
            Rack = luck.Next(3) == 0 ? 4 : null,
            Labels = labels,
            Systems = systems,
            Surfaces = surfaces,
            Hours = s_hours[luck.Next(s_hours.Length)],
        };
    }

    private static SteadyLabel Label(Random luck)
    {
        var (touch, open) = (luck.Next(10, 45), luck.Next(5, 30));
        return new SteadyLabel(touch, touch * luck.Next(3, 8), open, luck.Next(3) == 0 ? 0 : open + luck.Next(40, 120), luck.Next(6, 30) * 60);
    }

    private static string Lines(IEnumerable<string> lines) => string.Join('\n', lines);
}
