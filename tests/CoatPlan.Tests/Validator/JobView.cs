using System.Globalization;
using System.Text;
using YamlDotNet.RepresentationModel;

namespace CoatPlan.Tests.Validator;

/// <summary>One layer of a system, as the job file says it.</summary>
internal sealed record JobLayer(string Product, int? Coats, bool Mist, bool OnlyBare);

/// <summary>One surface of the job file; null where a preset would fill in.</summary>
internal sealed record JobSurface(
    string Id, int Count, string System, bool Stays, bool Masked, double? AreaM2, double? Relief, double? BareShare, bool IsBare, bool IsPanel);

/// <summary>What has been done already: an operation, or a coat of a layer, on some surfaces, ended at a time.</summary>
internal sealed record JobDone(ImmutableArray<string> Surfaces, string? Operation, int? Layer, int? Coat, double At);

/// <summary>A job file as the validator reads it, without any code of the program.</summary>
internal sealed record JobView
{
    private static readonly YamlMappingNode? s_productClasses = ReadProductClasses();

    public required double Start { get; init; }
    public double? FinishBy { get; init; }
    public double? AsOf { get; init; }
    public required double Reserve { get; init; }
    public required double TapeLimit { get; init; }
    public required bool Outdoors { get; init; }
    public double? RoomM3 { get; init; }
    public double? HoldC { get; init; }
    public required bool OpenHeater { get; init; }
    public required int Spots { get; init; }
    public int? Rack { get; init; }
    public Weather? Weather { get; init; }
    public required int People { get; init; }
    public required int Stations { get; init; }
    public required CrewHours Hours { get; init; }
    public required ImmutableDictionary<string, LabelView> Products { get; init; }
    public required ImmutableDictionary<string, ImmutableArray<JobLayer>> Systems { get; init; }
    public required ImmutableArray<JobSurface> Surfaces { get; init; }
    public required ImmutableDictionary<string, double> Have { get; init; }
    public required ImmutableArray<JobDone> Done { get; init; }

    public JobSurface? Surface(string id) => Surfaces.FirstOrDefault(surface => surface.Id == id);

    public static JobView Read(string yaml, string? hoursFile)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(yaml));
        var root = (YamlMappingNode)stream.Documents[0].RootNode;
        var place = root.Map("place")!;
        var crew = root.Map("crew")!;
        var surfaces = ReadSurfaces(root);
        return new JobView
        {
            Start = WallMinutes.Read(root.Text("start")!),
            FinishBy = root.Text("finish-by") is { } by ? WallMinutes.Read(by) : null,
            AsOf = root.Text("as-of") is { } now ? WallMinutes.Read(now) : null,
            Reserve = Reading.Share(root.Text("reserve")) ?? 0.10,
            TapeLimit = Reading.Minutes(root.Text("tape-limit")) ?? WallMinutes.Day,
            Outdoors = place.IsTrue("outdoors"),
            RoomM3 = ReadRoom(place.Map("room")),
            HoldC = Reading.Celsius(place.Text("hold")),
            OpenHeater = place.Text("heater")?.ToLowerInvariant() != "sealed",
            Spots = Whole(place.Text("spray-spots")) ?? 1,
            Rack = Whole(place.Text("rack")),
            Weather = ReadWeather(place.Map("weather")!, hoursFile),
            People = Whole(crew.Text("people")) ?? 1,
            Stations = Whole(crew.Text("stations")) ?? 1,
            Hours = CrewHours.Read(crew.Map("hours")!, Reading.Minutes(crew.Text("set-up")) ?? 0, Reading.Minutes(crew.Text("put-away")) ?? 0),
            Products = root.Map("products").Entries().ToImmutableDictionary(entry => entry.Key, entry => LabelView.Read((YamlMappingNode)entry.Value, s_productClasses)),
            Systems = root.Map("systems").Entries().ToImmutableDictionary(entry => entry.Key, entry => ReadLayers(entry.Value)),
            Surfaces = surfaces,
            Have = root.Map("have").Entries().Where(entry => Cans(entry.Value) is not null).ToImmutableDictionary(entry => entry.Key, entry => Cans(entry.Value)!.Value),
            Done = [.. root.List("done").OfType<YamlMappingNode>().Select(node => ReadDone(node, surfaces, WallMinutes.Read(root.Text("as-of") ?? root.Text("start")!)))],
        };
    }

    public static string IdOf(string name)
    {
        var text = new StringBuilder();
        foreach (var rune in name.ToLowerInvariant().EnumerateRunes())
        {
            if (Rune.IsLetterOrDigit(rune))
            {
                text.Append(rune.ToString());
            }
            else if (text.Length > 0 && text[^1] != '-')
            {
                text.Append('-');
            }
        }

        return text.ToString().Trim('-');
    }

    private static YamlMappingNode? ReadProductClasses()
    {
        string path = Path.Combine(AppContext.BaseDirectory, "presets", "products.yaml");
        if (!File.Exists(path))
        {
            return null;
        }

        var stream = new YamlStream();
        using var text = new StringReader(File.ReadAllText(path));
        stream.Load(text);
        return ((YamlMappingNode)stream.Documents[0].RootNode).Map("products");
    }

    private static ImmutableArray<JobSurface> ReadSurfaces(YamlMappingNode root)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        var result = ImmutableArray.CreateBuilder<JobSurface>();
        foreach (var node in root.List("surfaces").OfType<YamlMappingNode>())
        {
            string wanted = node.Text("id") ?? IdOf(node.Text("name")!), id = wanted;
            for (int again = 2; !taken.Add(id); again++)
            {
                id = string.Create(CultureInfo.InvariantCulture, $"{wanted}-{again}");
            }

            result.Add(new JobSurface(
                id, Whole(node.Text("count")) ?? 1, node.Text("system")!, node.IsTrue("stays"), node.List("mask").Any(),
                Reading.SquareMetres(node.Text("area")), Reading.Number(node.Text("relief")), Reading.Share(node.Text("bare-share")),
                string.Equals(node.Text("finish"), "bare", StringComparison.OrdinalIgnoreCase) && Reading.Share(node.Text("bare-share")) is null or > 0,
                (node.Text("form") ?? "panel").Equals("panel", StringComparison.OrdinalIgnoreCase)));
        }

        return result.ToImmutable();
    }

    private static ImmutableArray<JobLayer> ReadLayers(YamlNode layers) =>
    [
        .. ((YamlSequenceNode)layers).OfType<YamlMappingNode>().Select(node => new JobLayer(
            node.Text("product")!, Whole(node.Text("coats")), node.IsTrue("mist"), string.Equals(node.Text("only"), "bare", StringComparison.OrdinalIgnoreCase))),
    ];

    private static Weather? ReadWeather(YamlMappingNode weather, string? hoursFile)
    {
        if (weather.Map("steady") is { } steady)
        {
            return Weather.Steady(Reading.Celsius(steady.Text("air"))!.Value, Reading.Share(steady.Text("humidity"))!.Value);
        }

        if (weather.Map("daily") is { } daily)
        {
            return Weather.Daily(
                Reading.Celsius(daily.Text("low"))!.Value, Reading.Celsius(daily.Text("high"))!.Value,
                Reading.Celsius(daily.Text("dew-point")), Reading.Share(daily.Text("humidity")));
        }

        return hoursFile is null ? null : Weather.Hours(hoursFile);
    }

    private static double? ReadRoom(YamlMappingNode? room) =>
        room is null ? null : Reading.Metres(room.Text("length")) * Reading.Metres(room.Text("width")) * Reading.Metres(room.Text("height"));

    private static JobDone ReadDone(YamlMappingNode node, ImmutableArray<JobSurface> surfaces, double now)
    {
        var names = node.List("surfaces").OfType<YamlScalarNode>().Select(item => item.Value!).Concat(node.Text("surface") is { } one ? [one] : []);
        var ids = names.Select(name => surfaces.Any(surface => surface.Id == name) ? name : IdOf(name));
        return new JobDone(
            [.. ids], node.Text("operation")?.ToLowerInvariant().Replace(' ', '-'), Whole(node.Text("layer")), Whole(node.Text("coat")),
            WallMinutes.TryRead(node.Text("at") ?? "") ?? now);
    }

    private static int? Whole(string? text) =>
        int.TryParse(text, NumberStyles.Integer, CultureInfo.InvariantCulture, out int value) ? value : null;

    private static double? Cans(YamlNode amount) =>
        amount is YamlScalarNode { Value: { } text } ? Reading.Number(text) ?? Reading.Number(text.Replace("cans", "", StringComparison.Ordinal).Replace("can", "", StringComparison.Ordinal)) : null;
}
