using CoatPlan.Air;
using CoatPlan.Jobs;
using CoatPlan.Plans;

namespace CoatPlan.Composition;

/// <summary>The air report as the plan shows it.</summary>
internal static class PlanAirs
{
    public static PlanAir Of(Job job, AirReport air, RespiratorAdvice respirator, bool isWhole) => new()
    {
        RoomM3 = job.Place.Volume?.CubicMeters,
        ExhaustM3PerMin = job.Place.Exhaust.CubicMetersPerMinute,
        Mixing = job.Place.Mixing,
        ByStep = [.. air.ByStep.Select(Of)],
        TwaMixtureRatio = air.TwaMixtureRatio,
        ExhaustForLimitM3PerMin = air.ExhaustForLimit?.CubicMetersPerMinute,
        ExhaustForLelM3PerMin = air.ExhaustForLel?.CubicMetersPerMinute,
        DilutionForLimitM3PerMin = air.DilutionForLimit?.CubicMetersPerMinute,
        DilutionForLelM3PerMin = air.DilutionForLel?.CubicMetersPerMinute,
        BySolvent = [.. air.BySolvent.Select(one => Of(one, respirator.Factor))],
        Mends = [.. air.Mends.Select(Of)],
        Notes = AirNotes.Of(air, job.Place, job.UnitFormat, isWhole),
    };

    private static PlanExposure Of(SolventExposure one, int? factor) => new(
        one.Solvent.Name,
        one.Peak.PartsPerMillion,
        one.ShortTerm.PartsPerMillion,
        one.Shift.PartsPerMillion,
        one.Solvent.LowestLongTerm?.Share.PartsPerMillion,
        one.Solvent.ShortTerm?.Share.PartsPerMillion,
        one.Solvent.Ceiling?.Share.PartsPerMillion,
        one.Solvent.Idlh?.Share.PartsPerMillion,
        factor is { } known ? one.MaximumUse(known)?.PartsPerMillion : null);

    private static PlanMend Of(AirMend mend) => new(
        mend.Code,
        mend.Exhaust.CubicMetersPerMinute,
        [.. mend.AtATime.Select(one => new PlanAtATime(one.Product, one.Packages, one.Goes))],
        mend.Between?.TotalMinutes);

    private static PlanAirStep Of(StepAir step) => new(
        step.Step,
        step.Peaks.ToImmutableSortedDictionary(peak => peak.Solvent.Name, peak => peak.Share.PartsPerMillion, StringComparer.Ordinal),
        step.MixtureRatio,
        step.LelRatio,
        step.Purge?.TotalMinutes);
}
