using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;
using UnitsNet;

namespace CoatPlan.Jobs.Reading;

/// <summary>Reads shapes, each <c>{panel: {length: 12 in, …}}</c>.</summary>
internal static class ShapeReading
{
    /// <summary>Reads the shapes of a list, or the single shape in its place.</summary>
    public static ImmutableArray<Shape> ReadAll(Node node, string what, ReadingContext context)
    {
        if (node is TextNode or ListNode { Items.IsEmpty: true })
        {
            context.Problems.Add(node.Mark, Sentences.WrongKind(what, node is ListNode ? "an empty list" : Values.Kind(node), "a list of shapes such as `{panel: {length: 12 in, width: 8 in}}`"));
            return [];
        }

        return [.. Values.OneOrItems(node).Select(item => Read(item, context)).OfType<Shape>()];
    }

    private static Shape? Read(Node node, ReadingContext context)
    {
        if (MapReading.Of(node, JobKeys.Shape, context) is not { } shape) return null;
        string[] names = [.. JobKeys.Shapes.Select(known => known.Name).Where(shape.Has)];
        var read = names.Select(name => OfKind(name, shape.Map(name)!)).ToArray();
        if (names.Length > 1) context.Problems.Add(shape.MarkOf(names[1]), Sentences.OneOf(shape.What, names, names));
        else if (names.Length == 0) context.Problems.Add(shape.Mark, Sentences.OneOf(shape.What, JobKeys.Shapes.Select(known => known.Name), []));
        return read.Length == 1 ? read[0] : null;
    }

    private static Shape? OfKind(string name, MapReading? map)
    {
        if (map is null) return null;
        int count = map.Whole("count") ?? 1;
        var less = map.Find("less") is { } node and not Yaml.ListNode { Items.IsEmpty: true } ? ReadAll(node, "`less`", map.Context) : [];
        int before = map.Context.Problems.Count;
        if (Own(name, map) is not { } own) return null;
        var shape = own with { Count = count, Less = less, Mark = map.Mark };
        if (map.Context.Problems.Count > before) return shape;
        CheckLess(shape, name, map);
        return shape;
    }

    private static Shape? Own(string name, MapReading map) => name switch
    {
        "panel" => With(map, "length", "width") is [var length, var width]
            ? new PanelShape { Length = length, Width = width, Sides = map.Whole("sides") ?? 1 } : null,
        "disc" => With(map, "diameter") is [var diameter] ? new DiscShape { Diameter = diameter, Sides = map.Whole("sides") ?? 1 } : null,
        "ring" => With(map, "outer", "inner") is [var outer, var inner] && InOrder(map, "inner", inner, "outer", outer)
            ? new RingShape { Outer = outer, Inner = inner, Sides = map.Whole("sides") ?? 1 } : null,
        "box" => With(map, "length", "width", "height") is [var length, var width, var height]
            ? new BoxShape { Length = length, Width = width, Height = height, Faces = map.Whole("faces") ?? 6 } : null,
        "tube" => With(map, "diameter", "length") is [var diameter, var length]
            ? new TubeShape { Diameter = diameter, Length = length, Ends = map.Whole("ends") ?? 0, Inside = map.Flag("inside") ?? false } : null,
        "cone" => With(map, "base", "height") is [var atBase, var height]
            ? new ConeShape { Base = atBase, Top = map.Length("top") ?? Length.Zero, Height = height } : null,
        "dome" => With(map, "diameter", "height") is [var diameter, var height] ? new DomeShape { Diameter = diameter, Height = height } : null,
        "bend" => With(map, "diameter", "radius") is [var diameter, var radius] && IsOpen(map, diameter, radius)
            ? new BendShape { Diameter = diameter, Radius = radius, Angle = map.Angle("angle") ?? JobDefaults.BendAngle } : null,
        "channel" => With(map, "web", "flange", "length") is [var web, var flange, var length]
            ? new ChannelShape { Web = web, Flange = flange, Length = length } : null,
        "angle" => With(map, "leg-a", "leg-b", "length") is [var legA, var legB, var length]
            ? new AngleShape { LegA = legA, LegB = legB, Length = length } : null,
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "A shape of the contract."),
    };

    // The lengths under the keys; fewer than there are keys where one is missing or wrong, which is noted.
    private static Length[] With(MapReading map, params ReadOnlySpan<string> keys)
    {
        var lengths = new List<Length>();
        foreach (string key in keys)
        {
            if (map.Length(key) is { } length) lengths.Add(length);
        }

        return [.. lengths];
    }

    private static bool InOrder(MapReading map, string lessKey, Length less, string moreKey, Length more)
    {
        if (less.Meters < more.Meters) return true;
        map.Note(lessKey, Sentences.Order($"`{lessKey}`", map.Tried(lessKey), $"less than `{moreKey}`, `{map.Tried(moreKey)}`"));
        return false;
    }

    private static bool IsOpen(MapReading map, Length diameter, Length radius)
    {
        if (radius.Meters >= diameter.Meters / 2) return true;
        map.Note("radius", Sentences.Order("`radius`", map.Tried("radius"), $"at least half of `diameter`, `{map.Tried("diameter")}`"));
        return false;
    }

    private static void CheckLess(Shape shape, string name, MapReading map)
    {
        if (!shape.Less.IsEmpty && !(ShapeSize.SquareMetres(shape) > 0)) map.Note("less", Sentences.NothingLeft($"the {name}"));
    }
}
