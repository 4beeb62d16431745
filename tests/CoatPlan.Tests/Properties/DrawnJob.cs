using System.Globalization;

namespace CoatPlan.Tests.Properties;

/// <summary>A job drawn at random, as the text that a person would write.</summary>
internal sealed record DrawnJob(
    ImmutableArray<string> Head, DrawnWeather Weather, ImmutableArray<string> Place, ImmutableArray<string> Crew,
    ImmutableArray<string> Products, ImmutableArray<string> Systems, ImmutableArray<DrawnSurface> Surfaces, ImmutableArray<string> Tail)
{
    public string? Hours => Weather.Hours(DateTime.ParseExact(
        Head.First(line => line.StartsWith("start:", StringComparison.Ordinal))["start: ".Length..].Split(' ')[0], "yyyy-MM-dd", CultureInfo.InvariantCulture));

    /// <summary>The job file, with every area given as a figure larger by a factor, and the weather colder by some °F.</summary>
    public string Text(double areaFactor = 1, double colderF = 0)
    {
        IEnumerable<string> lines =
        [
            "coatplan: 1",
            .. Head,
            "place:",
            .. Place.Select(line => "  " + line),
            "  weather:",
            "    " + Weather.Text(colderF),
            "crew:",
            .. Crew.Select(line => "  " + line),
            "products:",
            .. Products.Select(line => "  " + line),
            "systems:",
            .. Systems.Select(line => "  " + line),
            "surfaces:",
            .. Surfaces.SelectMany(surface => surface.Text(areaFactor)),
            .. Tail,
        ];
        return string.Join('\n', lines) + "\n";
    }

    public override string ToString() => Text();
}
