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
        var found = ImmutableArray.CreateBuilder<Pairing>();
        if (bareShare > 0)
        {
            var on = painted ? Pairing.OnSpots : Pairing.OnMaterial;
            for (var i = 0; i < layers.Length; i++)
            {
                var pairing = OnMaterial(on, layers[i].Label, measured, catalogue);
                if (i == 0 || through.Contains(pairing.Judgement.Key))
                    AddOnce(found, pairing);
            }

            AddOver(found, layers, catalogue);
        }
        else
        {
            // Under a whole old film the material is still what gets hot and what bends.
            foreach (var layer in layers)
            {
                var pairing = OnMaterial(Pairing.OnMaterial, layer.Label, measured, catalogue);
                if (pairing.Judgement.Verdict == Verdict.No && through.Contains(pairing.Judgement.Key))
                    AddOnce(found, pairing);
            }
        }

        if (painted && bareShare < 1)
        {
            ImmutableArray<PreparedLayer> full = [.. layers.Where(layer => !layer.OnlyBare)];
            if (!full.IsEmpty)
                AddOnce(found, OnFinish(full[0].Label, measured.Surface.Finish, catalogue));
            AddOver(found, full, catalogue);
        }

        return found.DrainToImmutable();
    }

    // A handful, of which the labels are the same objects: looking is much quicker than hashing whole labels.
    private static void AddOnce(ImmutableArray<Pairing>.Builder found, Pairing pairing)
    {
        if (!found.Contains(pairing))
            found.Add(pairing);
    }

    private static void AddOver(ImmutableArray<Pairing>.Builder found, ImmutableArray<PreparedLayer> layers, Catalogue catalogue)
    {
        for (var i = 1; i < layers.Length; i++)
        {
            var (below, above) = (layers[i - 1].Label, layers[i].Label);
            AddOnce(found, new Pairing(Pairing.OnLayer, above, below.Name, catalogue.Compatibility.Over(above.Preset, below.Preset)));
        }
    }

    private static Pairing OnFinish(Label label, string finish, Catalogue catalogue) =>
        new(Pairing.OnFinish, label, finish, catalogue.Compatibility.OverFinish(label.Preset, finish));

    private static Pairing OnMaterial(string on, Label label, MeasuredSurface measured, Catalogue catalogue)
    {
        var judgement = catalogue.Compatibility.OnMaterial(label.Preset, measured.Surface.Material);
        var rusty = catalogue.Material(measured.Surface.Material).IsFerrous
            && measured.Surface.Conditions.Any(word => catalogue.Condition(word).Rust);
        return new Pairing(
            on, label, measured.Surface.Material, label.Rust == RustRule.Only && rusty ? judgement with { Verdict = Verdict.Yes } : judgement);
    }
}
