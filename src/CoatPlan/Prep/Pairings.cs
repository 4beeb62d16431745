using CoatPlan.Areas;
using CoatPlan.Presets;

namespace CoatPlan.Prep;

/// <summary>Which product of a system meets what, and whether it may.</summary>
internal static class Pairings
{
    /// <summary>All pairings of a surface, each once: what meets bare material, what meets the old finish, and layer over layer.</summary>
    /// <param name="measured">The surface.</param>
    /// <param name="layers">Its system.</param>
    /// <param name="through">Keys of reasons that hold under any primer, such as a plastic that softens.</param>
    /// <param name="catalogue">The tables.</param>
    public static ImmutableArray<Pairing> Of(
        MeasuredSurface measured, ImmutableArray<PreparedLayer> layers, ImmutableArray<string> through, Catalogue catalogue)
    {
        var painted = catalogue.Finish(measured.Surface.Finish).IsPaint;
        var bareShare = measured.BareShare.DecimalFractions;
        var full = layers.Where(layer => !layer.OnlyBare).ToImmutableArray();
        var found = new List<Pairing>();
        if (bareShare > 0)
        {
            var on = painted ? Pairing.OnSpots : Pairing.OnMaterial;
            found.AddRange(layers.Take(1).Select(layer => OnMaterial(on, layer.Label, measured, catalogue)));
            found.AddRange(layers.Skip(1)
                .Select(layer => OnMaterial(on, layer.Label, measured, catalogue))
                .Where(pairing => through.Contains(pairing.Judgement.Key, StringComparer.Ordinal)));
            found.AddRange(Over(layers, catalogue));
        }
        else
        {
            // Under a whole old film the material is still what gets hot and what bends.
            found.AddRange(layers
                .Select(layer => OnMaterial(Pairing.OnMaterial, layer.Label, measured, catalogue))
                .Where(pairing => pairing.Judgement.Verdict == Verdict.No && through.Contains(pairing.Judgement.Key, StringComparer.Ordinal)));
        }

        if (painted && bareShare < 1)
        {
            found.AddRange(full.Take(1).Select(layer => new Pairing(
                Pairing.OnFinish, layer.Label, measured.Surface.Finish, catalogue.Compatibility.OverFinish(layer.Label.Preset, measured.Surface.Finish))));
            found.AddRange(Over(full, catalogue));
        }

        return Each(found);
    }

    // A handful, of which the labels are the same objects: looking is much quicker than hashing whole labels.
    private static ImmutableArray<Pairing> Each(List<Pairing> found)
    {
        var once = ImmutableArray.CreateBuilder<Pairing>(found.Count);
        foreach (var pairing in found)
        {
            if (!once.Contains(pairing))
                once.Add(pairing);
        }

        return once.DrainToImmutable();
    }

    private static Pairing OnMaterial(string on, Label label, MeasuredSurface measured, Catalogue catalogue)
    {
        var judgement = catalogue.Compatibility.OnMaterial(label.Preset, measured.Surface.Material);
        var rusty = catalogue.Material(measured.Surface.Material).IsFerrous
            && measured.Surface.Conditions.Any(word => catalogue.Condition(word).Rust);
        return new Pairing(
            on, label, measured.Surface.Material, label.Rust == RustRule.Only && rusty ? judgement with { Verdict = Verdict.Yes } : judgement);
    }

    private static IEnumerable<Pairing> Over(ImmutableArray<PreparedLayer> layers, Catalogue catalogue) =>
        layers.Zip(layers.Skip(1), (below, above) => new Pairing(
            Pairing.OnLayer, above.Label, below.Label.Name, catalogue.Compatibility.Over(above.Label.Preset, below.Label.Preset)));
}
