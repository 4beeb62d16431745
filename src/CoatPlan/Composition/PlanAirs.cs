using System.Globalization;
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
        Notes = [.. Notes(air)],
    };

    private static PlanAirStep Of(StepAir step) => new(
        step.Step,
        step.Peaks.ToImmutableSortedDictionary(peak => peak.Solvent.Name, peak => peak.Share.PartsPerMillion, StringComparer.Ordinal),
        step.MixtureRatio,
        step.LelRatio,
        step.Purge?.TotalMinutes);

    private static IEnumerable<string> Notes(AirReport air)
    {
        yield return "Computed for a well-mixed room: the air that the person spraying breathes and the vapour along the floor hold more than this.";
        if (!air.WithoutLimit.IsEmpty)
            yield return $"Without an 8-hour limit, and so left out of the share of the limits: {string.Join(", ", air.WithoutLimit)}.";
        foreach (var passed in air.ShortLimitsPassed)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"{passed.Solvent.Name}: {passed.Mean.PartsPerMillion:0} ppm over {passed.Over.TotalMinutes:0} min is over the short-term limit of {passed.Limit.PartsPerMillion:0} ppm.");
        }

        if (air.DilutionForLimit is { } dilution)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"Beside it, the textbook's dilution figure for the heaviest coat, all of it given off while it is sprayed: {dilution.CubicMetersPerMinute:0.#} m³/min.");
        }
    }
}
