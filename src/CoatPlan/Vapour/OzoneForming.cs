using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Vapour;

/// <summary>How much ozone the vapour of a product may form outdoors.</summary>
/// <remarks>
/// The product-weighted reactivity Σ factor × share by mass, solids and water counting nothing, parts under <c>ozone-least-share</c> neither. Shares that a
/// data sheet gives as a range count at their upper end, so the sum is the careful one. Source: 40 CFR 59.505.
/// </remarks>
/// <param name="GramsPerGram">Grams of ozone for a gram of product.</param>
/// <param name="PerPackage">Ozone that the whole contents of a package may form; null where its mass is unknown.</param>
public sealed record OzoneForming(double GramsPerGram, Mass? PerPackage)
{
    /// <summary>What a label allows; null where no solvents are known, or one of them has no factor.</summary>
    /// <param name="label">The product.</param>
    /// <param name="figures">The share that counts nothing.</param>
    public static OzoneForming? Of(Label label, Figures figures)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(figures);

        var least = figures.Share("ozone-least-share").DecimalFractions;
        var counted = label.Solvents.Where(part => part.Share.DecimalFractions >= least && IsOrganic(part.Solvent)).ToArray();
        if (label.Solvents.IsEmpty || counted.Any(part => part.Solvent.Ozone is null))
            return null;

        var reactivity = counted.Sum(part => part.Share.DecimalFractions * part.Solvent.Ozone!.GramsPerGram);
        return new OzoneForming(reactivity, label.NetMass * reactivity);
    }

    /// <summary>All but water: it neither burns nor forms ozone.</summary>
    private static bool IsOrganic(Solvent solvent) => solvent.Burns || solvent.Voc || solvent.Ozone is not null;
}
