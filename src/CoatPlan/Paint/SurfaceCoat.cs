using UnitsNet;

namespace CoatPlan.Paint;

/// <summary>One coat of one layer on all the pieces of one surface, at one station.</summary>
public sealed record SurfaceCoat
{
    /// <summary>The layer it belongs to.</summary>
    public required SurfaceLayer On { get; init; }

    /// <summary>Coat within the layer, from 1; 0 is the mist coat.</summary>
    public required int Coat { get; init; }

    /// <summary>Area times coats, a mist coat counted half.</summary>
    public required Area AreaCoats { get; init; }

    /// <summary>Packages that it takes, on the basis that asks for more, what sprays past the part's form included; at least 0.</summary>
    public required double Packages { get; init; }

    /// <summary>What it takes of the whole contents by volume; null where the package's volume is unknown.</summary>
    public required Volume? Volume { get; init; }

    /// <summary>What it takes of the whole contents by mass; null where the package's mass is unknown.</summary>
    public required Mass? Mass { get; init; }

    /// <summary>Hands-on time for the pieces, rest included, opening packages not.</summary>
    public required Duration Hands { get; init; }

    /// <summary>The surface's id.</summary>
    public string Surface => On.Surface.Id;

    /// <summary>Layer of the system, from 1.</summary>
    public int Layer => On.Layer;

    /// <summary>Full coats in the layer.</summary>
    public int Of => On.Coats.Coats;

    /// <summary>Key of the product.</summary>
    public string Product => On.Label.Key;

    /// <summary>Whether it is the mist coat.</summary>
    public bool IsMist => Coat == 0;
}
