using System.Globalization;
using CoatPlan.Jobs;
using CoatPlan.Prep;
using UnitsNet;

namespace CoatPlan.Paint;

/// <summary>What is wrong with the coats of a layer.</summary>
internal static class CoatWarnings
{
    public static IEnumerable<Warning> Of(SurfaceLayer layer)
    {
        if (layer.Coats.IsPastLabel)
            yield return PastLabel(layer);
        if (layer.Coats.SystemAsksTooFew || layer.Coats.DoesNotHide)
            yield return TooFew(layer);
        if (WetFilm.OnThePart(layer.Label) is { } wet && layer.Label.HoldsOnVertical is { } holds && wet > holds
            && layer.Surface.Surface.Faces != FaceDirection.Level)
            yield return TooThick(layer, wet, holds);
        if (!PackageReach.Of(layer.Label).IsKnown)
            yield return Unknown(layer);
    }

    private static Warning PastLabel(SurfaceLayer layer) => On(layer, "past-label-coats", string.Create(
        CultureInfo.InvariantCulture,
        $"{Name(layer)}: {Coats(layer.Coats.Coats)} asked, the label's most is {layer.Coats.LabelMost}. Planned as asked; a film past its label dries slowly, stays soft below and may crack: ask for {layer.Coats.LabelMost}, or let it dry through and scuff between."));

    private static Warning TooFew(SurfaceLayer layer)
    {
        var asked = layer.Coats;
        var wanted = asked.ForHiding > asked.LabelLeast
            ? $"hiding what is below takes about {asked.ForHiding}"
            : $"the label's least is {asked.LabelLeast}";
        var planned = asked.DoesNotHide ? $"Planned {asked.Coats}; the old colour may show." : $"Planned {asked.Coats}.";
        var primer = layer.Primer is { } shade ? $" Over a {shade.Word} primer {Coats(shade.Coats)} would hide." : "";
        var system = asked.ByJob is { } byJob ? $"the system asks {Coats(byJob)}, " : "";
        return On(layer, "too-few-coats", string.Create(CultureInfo.InvariantCulture, $"{Name(layer)}: {system}{wanted}. {planned}{primer}"));
    }

    private static Warning TooThick(SurfaceLayer layer, Length wet, Length holds) => On(layer, "too-thick-on-vertical", string.Create(
        CultureInfo.InvariantCulture,
        $"{Name(layer)}: one coat lies {wet.Micrometers:0} µm wet once the propellant is gone, an upright face holds about {holds.Micrometers:0} µm. Lay it in two lighter coats, or turn the face level."));

    private static Warning Unknown(SurfaceLayer layer) => On(layer, "data-missing",
        $"{Name(layer)}: neither coverage nor solids with film and package are known, so no paint could be counted. Give `covers` from the label.");

    private static Warning On(SurfaceLayer layer, string code, string text) => new(code, layer.Surface.Id, layer.Label.Key, text);

    private static string Name(SurfaceLayer layer) => $"{layer.Label.Name} on {layer.Surface.Surface.Name}";

    private static string Coats(int count) => count == 1 ? "1 coat" : string.Create(CultureInfo.InvariantCulture, $"{count} coats");
}
