using CoatPlan.Areas;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Prep;

/// <summary>What is masked on one piece of a surface.</summary>
internal static class Masking
{
    /// <summary>The kind that stands for what is around a surface sprayed in place.</summary>
    public const string Surroundings = "surroundings";

    private const string AnyKind = "plastic";
    private const string Plug = "plug";

    /// <summary>The job's list; for a surface sprayed in place with nothing listed, what is around it; else nothing.</summary>
    public static ImmutableArray<MaskedItem> OnePiece(MeasuredSurface surface, string name, PrepMasking masking, Catalogue catalogue)
    {
        if (!surface.Surface.Masks.IsEmpty)
            return [.. surface.Surface.Masks.Select(mask => Listed(surface, mask, masking, catalogue))];
        return surface.Surface.Stays ? [Around(surface, name, masking)] : [];
    }

    private static MaskedItem Listed(MeasuredSurface surface, MaskItem mask, PrepMasking masking, Catalogue catalogue)
    {
        var kind = mask.Kind ?? AnyKind;
        var plugged = mask.Edge is null && mask.Area is null && catalogue.MaskKind(kind).Rate == Plug;
        var edge = mask.Edge ?? (plugged || mask.Area is not null ? Length.Zero : masking.EdgeNotSaid);
        return new MaskedItem(
            surface.Id, mask.What, kind, masking.How.GetValueOrDefault(kind, "tape and paper"), edge, mask.Area ?? Area.Zero, plugged ? 1 : 0);
    }

    private static MaskedItem Around(MeasuredSurface surface, string name, PrepMasking masking)
    {
        const int SidesOfASquare = 4;
        var edge = Length.FromMeters(SidesOfASquare * Math.Sqrt(surface.Piece.SquareMeters));
        return new MaskedItem(
            surface.Id, $"what is around {name}", Surroundings, masking.How.GetValueOrDefault(Surroundings, "film"), edge, edge * masking.Apron, 0);
    }
}
