using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Timetable;

/// <summary>One coat on all the surfaces of a batch that take it.</summary>
/// <param name="Layer">Layer of the system, from 1.</param>
/// <param name="Coat">Coat within the layer, from 1; 0 is the mist coat.</param>
/// <param name="Of">Full coats in the layer.</param>
/// <param name="Label">The product's label.</param>
/// <param name="Surfaces">Ids of the surfaces that take it, at least one.</param>
/// <param name="Hands">Hands-on time.</param>
/// <param name="Volume">Contents applied; null where the contents are unknown.</param>
/// <param name="Mass">The same by mass; null where unknown.</param>
internal sealed record CoatTask(
    int Layer, int Coat, int Of, Label Label, ImmutableArray<string> Surfaces, Duration Hands, Volume? Volume, Mass? Mass)
{
    /// <summary>Its film over the label's film of one coat, where it was read thicker than that; else 1.</summary>
    public double FilmShare { get; init; } = 1;

    /// <summary>Hands-on time without opening packages, which depends on how the surfaces are batched.</summary>
    public required Duration HandsOnPieces { get; init; }

    /// <summary>Packages that it takes, not rounded.</summary>
    public required double Packages { get; init; }

    /// <summary>Whether this is a mist coat.</summary>
    public bool Mist => Coat == 0;

    /// <summary>Whether it is sprayed rather than brushed.</summary>
    public bool Sprayed => Label.Method.Sprays;
}
