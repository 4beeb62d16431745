using CoatPlan.Prep;

namespace CoatPlan.Paint;

/// <summary>All coats of a job at one station, not yet dated.</summary>
public sealed record Coats
{
    // Each step of a batch asks for the coat of each of its surfaces.
    private readonly Dictionary<(string Surface, int Layer, int Coat), SurfaceCoat> byPlace = [];

    /// <summary>The layers, by surface in the job's order, then first to last.</summary>
    public required ImmutableArray<SurfaceLayer> Layers { get; init; }

    /// <summary>The coats of those layers, in the same order, the mist coat of a layer first.</summary>
    public required ImmutableArray<SurfaceCoat> All
    {
        get;
        init
        {
            field = value;
            byPlace = new(value.Length);
            foreach (var coat in value)
                byPlace.TryAdd((coat.Surface, coat.Layer, coat.Coat), coat);
        }
    }

    /// <summary>What will go wrong unless the job is changed, in the order of the surfaces.</summary>
    public required ImmutableArray<Warning> Warnings { get; init; }

    /// <summary>One coat of one layer on several surfaces, in the order asked for.</summary>
    /// <param name="surfaces">Ids of surfaces that have the layer and coat.</param>
    /// <param name="layer">Layer of the system, from 1.</param>
    /// <param name="coat">Coat, from 1; 0 is the mist coat.</param>
    /// <exception cref="ArgumentException">A surface that has no such coat.</exception>
    public ImmutableArray<SurfaceCoat> Of(ImmutableArray<string> surfaces, int layer, int coat) =>
    [
        .. surfaces.Select(id => byPlace.GetValueOrDefault((id, layer, coat))
            ?? throw new ArgumentException($"'{id}' has no coat {coat} of layer {layer}", nameof(surfaces))),
    ];
}
