using CoatPlan.Presets;
using CoatPlan.Vapour;
using UnitsNet;

namespace CoatPlan.Timetable;

/// <summary>When the vapour of a coat is gone so far that a flame may burn again, for the order of steps; what is breathed is the air room's question.</summary>
/// <remarks>
/// The film has given off nearly all when it can be touched; from there the exhaust is given the time to clear the vapour of every coat of the job at once
/// down to the mixture limit. It errs on the late side, since all coats are never in the air together.
/// </remarks>
internal static class PurgeTimes
{
    /// <summary>Minutes from dry to touch until the vapour of all the coats would be cleared; 0 outdoors.</summary>
    public static int ClearingMinutes(Jobs.Job job, IEnumerable<CoatTask> coats, Catalogue catalogue)
    {
        if (WorkRoom.Of(job.Place, catalogue.Figures) is not { } room)
            return 0;

        // What a product gives off grows with its mass.
        var shareOfLimits = coats.Where(coat => coat.Mass is not null).GroupBy(coat => coat.Label.Key)
            .Sum(ofOne => MixtureRatio(ofOne.First().Label, Mass.FromGrams(ofOne.Sum(coat => coat.Mass!.Value.Grams)), room, catalogue));
        return shareOfLimits > 1 && PurgeTime.Of(room, shareOfLimits, 1) is { } time ? (int)Math.Ceiling(time.TotalMinutes) : 0;
    }

    private static double MixtureRatio(Label label, Mass mass, WorkRoom room, Catalogue catalogue) =>
        CoatVapour.Of(label, mass, catalogue.Figures).Solvents
            .Where(release => release.Solvent.LowestLongTerm is not null)
            .Sum(release => Concentration.In(release.Total, release.Solvent, room.Volume) / release.Solvent.LowestLongTerm!.Share);
}
