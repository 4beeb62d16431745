using CoatPlan.Jobs;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Areas;

/// <summary>How much surface a job has.</summary>
public static class SurfaceAreas
{
    private const double WhollyBare = 1;

    /// <summary>Measures every surface of a job, in the job's order.</summary>
    /// <param name="job">The job.</param>
    /// <param name="catalogue">Relief, gauge and bare shares where the job gives none.</param>
    /// <exception cref="ArgumentException">A word that the catalogue does not know, or a surface without area.</exception>
    public static ImmutableArray<MeasuredSurface> Measure(Job job, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(catalogue);
        return [.. job.Surfaces.Select(surface => Measure(surface, catalogue))];
    }

    /// <summary>Measures one surface.</summary>
    /// <param name="surface">The surface.</param>
    /// <param name="catalogue">Relief, gauge and bare share where the job gives none.</param>
    /// <exception cref="ArgumentException">A word that the catalogue does not know, or a surface without area.</exception>
    public static MeasuredSurface Measure(JobSurface surface, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(surface);
        ArgumentNullException.ThrowIfNull(catalogue);

        var outline = surface.Area ?? ShapeArea.Of(surface.Shapes);
        var relief = surface.Relief ?? catalogue.Relief(surface.Material, surface.Form);
        var piece = outline * relief;
        return new MeasuredSurface
        {
            Surface = surface,
            Relief = relief,
            Outline = outline,
            Piece = piece,
            Total = AreaRange.Around(piece * surface.Count, surface.Spread),
            BareShare = surface.BareShare ?? BareShare(surface, catalogue),
            Gauge = surface.Gauge ?? catalogue.Material(surface.Material).Gauge,
            FacesInAir = catalogue.Material(surface.Material).Cast ? 1 : 2,
        };
    }

    /// <summary>What is bare after prep: all of a bare surface, else what the worst of its conditions leaves.</summary>
    private static Ratio BareShare(JobSurface surface, Catalogue catalogue) => Ratio.FromDecimalFractions(
        catalogue.Finish(surface.Finish).IsPaint
            ? surface.Conditions.Max(word => catalogue.Condition(word).BareShare)
            : WhollyBare);
}
