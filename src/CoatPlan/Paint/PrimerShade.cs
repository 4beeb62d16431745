using CoatPlan.Presets;

namespace CoatPlan.Paint;

/// <summary>A primer that saves coats of the colour over it.</summary>
/// <param name="Word">How light it is, in the words of the catalogue.</param>
/// <param name="Coats">Coats of the colour that hide it.</param>
public sealed record PrimerShade(string Word, int Coats)
{
    /// <summary>The shade over which fewest coats hide, the nearest to the colour where several do; null where none saves a coat.</summary>
    /// <param name="colour">The product over it.</param>
    /// <param name="without">Coats that hide what is there now.</param>
    /// <param name="catalogue">Words for lightness, and when a film hides.</param>
    public static PrimerShade? For(Label colour, int without, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(colour);
        ArgumentNullException.ThrowIfNull(catalogue);
        if (colour.Lightness is not { } lightness)
            return null;

        var best = catalogue.LightnessWords.Select(word => (word.Word, word.Lightness, Coats: HidingCoats.Over(word.Lightness, colour, catalogue.Figures) ?? 1))
            .OrderBy(shade => shade.Coats).ThenBy(shade => Math.Abs(shade.Lightness - lightness)).First();
        return best.Coats < without ? new PrimerShade(best.Word, best.Coats) : null;
    }
}
