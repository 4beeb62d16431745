using CoatPlan.Climate;
using CoatPlan.Presets;

namespace CoatPlan.Timetable;

/// <summary>The network of an arranged job, every way open to pass each gap, as it is in other air and for films that dry slower.</summary>
internal static class OtherAir
{
    /// <summary>The network with the same activities and links in the same order, its waits those of the air and the pace.</summary>
    /// <param name="settled">The arranged job, its whole placed.</param>
    /// <param name="climate">The air.</param>
    /// <param name="catalogue">What the trade knows.</param>
    /// <param name="slowness">How much longer every film takes than it should, 1 or more.</param>
    public static WorkNetwork Of(Settled settled, PlaceClimate climate, Catalogue catalogue, double slowness)
    {
        var air = climate.HasOpenHeater ? climate.WithHeaterOff(settled.HeaterOffs) : climate;
        var place = settled.Place with { AirAround = new AirAround(new SurfaceAirs(air, slowness), settled.Place.Job, catalogue) };
        return NetworkDrawing.Draw(settled.Arranged.Batches, place);
    }

    /// <summary>For each activity the minutes of doing it again where it has gone stale; below 0 for coats, which cannot be.</summary>
    public static ImmutableArray<int> Redo(WorkNetwork drawn) => [.. drawn.Nodes.Select(node => node.Coat is null ? node.Activity.Work : -1)];
}
