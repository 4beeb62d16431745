using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Vapour;

/// <summary>What a coat gives off, from how much of the product is sprayed and what its data sheet says is in it.</summary>
public static class CoatVapour
{
    /// <summary>Share of the propellant that is in the air as soon as it leaves the can: all of it.</summary>
    private const double AllAtOnce = 1;

    /// <summary>What so much of a product gives off.</summary>
    /// <remarks>
    /// All that is sprayed evaporates in the end, what misses the part included. Propellant is gone at once; of the other solvents the share
    /// <c>released-at-once</c> flies off before or as the spray lands, and the film lets go of the rest so that at dry to touch the share
    /// <c>film-left-at-touch</c> of it is still there. Water and what neither burns nor has a limit is left out.
    /// </remarks>
    /// <param name="label">The product.</param>
    /// <param name="contents">What is sprayed of its whole contents, at least 0.</param>
    /// <param name="figures">Shares of the release.</param>
    /// <exception cref="ArgumentOutOfRangeException">A mass under 0.</exception>
    public static CoatRelease Of(Label label, Mass contents, Figures figures)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentOutOfRangeException.ThrowIfNegative(contents.Grams);

        var flash = figures.Share("released-at-once").DecimalFractions;
        return new CoatRelease(
            [.. label.Solvents.Where(share => Counts(share.Solvent)).OrderBy(share => share.Solvent.Name, StringComparer.Ordinal).Select(Release)],
            FilmTime(label.Times.Touch, figures.Share("film-left-at-touch")));

        SolventRelease Release(SolventContent share)
        {
            var all = contents * share.Share.DecimalFractions;
            var atOnce = all * (share.Solvent.Propellant ? AllAtOnce : flash);
            return new SolventRelease(share.Solvent, atOnce, all - atOnce);
        }
    }

    /// <summary>Time constant of a film that still holds a share of its solvent when it can be touched.</summary>
    /// <param name="touch">Time to dry to touch, more than zero.</param>
    /// <param name="left">Share left then, over 0 and under 1.</param>
    internal static Duration FilmTime(Duration touch, Ratio left)
    {
        if (touch <= Duration.Zero)
            throw new ArgumentOutOfRangeException(nameof(touch), touch, "More than zero.");
        if (left.DecimalFractions is not (> 0 and < 1))
            throw new ArgumentOutOfRangeException(nameof(left), left, "Over 0 and under 1.");

        return touch / -Math.Log(left.DecimalFractions);
    }

    private static bool Counts(Solvent solvent) => solvent.Burns || solvent.LowestLongTerm is not null || solvent.Voc;
}
