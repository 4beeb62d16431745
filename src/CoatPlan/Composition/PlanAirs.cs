using CoatPlan.Air;
using CoatPlan.Jobs;
using CoatPlan.Plans;

namespace CoatPlan.Composition;

/// <summary>The air report as the plan shows it.</summary>
internal static class PlanAirs
{
    public static PlanAir Of(Place place, AirReport air) => new()
    {
        RoomM3 = place.Volume?.CubicMeters,
        ExhaustM3PerMin = place.Exhaust.CubicMetersPerMinute,
        Mixing = place.Mixing,
        ByStep = [.. air.ByStep.Select(Of)],
        TwaMixtureRatio = air.TwaMixtureRatio,
        ExhaustForLimitM3PerMin = air.ExhaustForLimit?.CubicMetersPerMinute,
        ExhaustForLelM3PerMin = air.ExhaustForLel?.CubicMetersPerMinute,
        Notes = AirNotes.Of(air, place),
    };

    private static PlanAirStep Of(StepAir step) => new(
        step.Step,
        step.Peaks.ToImmutableSortedDictionary(peak => peak.Solvent.Name, peak => peak.Share.PartsPerMillion, StringComparer.Ordinal),
        step.MixtureRatio,
        step.LelRatio,
        step.Purge?.TotalMinutes);
}
