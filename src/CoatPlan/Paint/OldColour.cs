using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Paint;

/// <summary>How light it is under the next layer.</summary>
internal static class OldColour
{
    /// <summary>L* of a surface before its first layer: as the job says, else by its finish, else the bare material's.</summary>
    public static double? Of(JobSurface surface, Catalogue catalogue)
    {
        if (surface.Lightness is { LStar: { } said })
            return said;
        if (surface.Lightness is { Word: { } word })
            return catalogue.LightnessWords.First(row => row.Word == word).Lightness;
        return catalogue.Finish(surface.Finish).Lightness ?? catalogue.Material(surface.Material).Lightness;
    }

    /// <summary>L* over so many coats of a product: a clear one, whose colour nobody gives, leaves what was there.</summary>
    public static double? Under(Label label, int coats, double? before) =>
        label.Lightness is null && !label.MustHide ? before : HidingCoats.Leaves(before, label, coats);
}
