using CoatPlan.Areas;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Paint;

/// <summary>Which coats a job takes, how much paint goes into each and how long it takes to put on.</summary>
public static class PaintWork
{
    /// <summary>A mist coat takes half of what a full coat takes.</summary>
    private const double MistShare = 0.5;

    /// <summary>The coats of a job at one station.</summary>
    /// <param name="job">The job.</param>
    /// <param name="surfaces">Its surfaces as measured, in its order.</param>
    /// <param name="labels">Its labels.</param>
    /// <param name="catalogue">Forms, rates and words.</param>
    /// <exception cref="ArgumentException">A system, product or word that the job or the catalogue does not have.</exception>
    public static Coats Of(Job job, ImmutableArray<MeasuredSurface> surfaces, Labels labels, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(labels);
        ArgumentNullException.ThrowIfNull(catalogue);

        var hiding = new HidingOnce(catalogue);
        var layers = surfaces.SelectMany(surface => Layers(System(job, surface), surface, labels, hiding, catalogue)).ToImmutableArray();
        return new Coats
        {
            Layers = layers,
            All = [.. layers.SelectMany(layer => CoatsOf(layer, catalogue))],
            Warnings = [.. layers.SelectMany(CoatWarnings.Of)],
        };
    }

    private static PaintSystem System(Job job, MeasuredSurface surface) =>
        job.Systems.FirstOrDefault(system => system.Key == surface.Surface.System)
        ?? throw new ArgumentException($"the job has no system '{surface.Surface.System}'", nameof(job));

    /// <summary>The layers that are sprayed: one for bare spots only falls away where nothing is bare.</summary>
    private static IEnumerable<SurfaceLayer> Layers(
        PaintSystem system, MeasuredSurface surface, Labels labels, HidingOnce hiding, Catalogue catalogue)
    {
        var below = OldColour.Of(surface.Surface, catalogue);
        var seen = LastColour(system, labels);
        for (var i = 0; i < system.Layers.Length; i++)
        {
            var layer = system.Layers[i];
            var share = layer.OnlyBare ? surface.BareShare : Ratio.FromDecimalFractions(1);
            if (!(share.DecimalFractions > 0))
                continue;

            var label = labels[layer.Product];
            int? hidden = i == seen ? hiding.Over(below, label) : null;
            var coats = CoatsAsked.Of(layer.Coats, label.CoatsLeast, label.CoatsMost, hidden);
            yield return new SurfaceLayer
            {
                Surface = surface,
                Layer = i + 1,
                Label = label,
                Coats = coats,
                Mist = layer.Mist,
                Share = share,
                Primer = hidden > 1 ? hiding.Primer(label, hidden.Value) : null,
            };
            if (!layer.OnlyBare)
                below = hiding.Under(label, coats.Coats, below);
        }
    }

    /// <summary>Index of the layer whose colour is seen in the end, a clear over it aside; −1 where no layer must hide.</summary>
    /// <remarks>A primer under it need not hide: what shows through the primer is covered anyway.</remarks>
    private static int LastColour(PaintSystem system, Labels labels)
    {
        var last = -1;
        for (var i = 0; i < system.Layers.Length; i++)
        {
            if (labels[system.Layers[i].Product].MustHide && !system.Layers[i].OnlyBare)
                last = i;
        }

        return last;
    }

    private static IEnumerable<SurfaceCoat> CoatsOf(SurfaceLayer layer, Catalogue catalogue)
    {
        var reach = PackageReach.Of(layer.Label).Area;
        if (layer.Mist)
            yield return Coat(layer, 0, MistShare, reach, catalogue);
        for (var coat = 1; coat <= layer.Coats.Coats; coat++)
            yield return Coat(layer, coat, 1, reach, catalogue);
    }

    private static SurfaceCoat Coat(SurfaceLayer layer, int coat, double share, Area? reach, Catalogue catalogue)
    {
        var label = layer.Label;
        var areaCoats = layer.Area * share;
        var packages = reach is { } known ? areaCoats / known * PaintFactor(layer, catalogue) : 0;
        Mass? mass = label.NetMass is { } netMass ? netMass * packages : null;
        return new SurfaceCoat
        {
            On = layer,
            Coat = coat,
            AreaCoats = areaCoats,
            Packages = packages,
            Volume = label.NetVolume is { } netVolume ? netVolume * packages : null,
            Mass = mass,
            Hands = SprayTime.Of(layer.Surface, layer.Area, mass, label.Method, SprayTime.Rate(label.Method, coat == 0, catalogue), catalogue),
        };
    }

    /// <summary>What sprays past the part's form; a brush misses none.</summary>
    private static double PaintFactor(SurfaceLayer layer, Catalogue catalogue) =>
        layer.Label.Method.Sprays ? catalogue.Form(layer.Surface.Surface.Form).PaintFactor : 1;
}
