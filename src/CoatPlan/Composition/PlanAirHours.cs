using CoatPlan.Plans;
using CoatPlan.Timetable;

namespace CoatPlan.Composition;

/// <summary>The air hour by hour, as the plan shows it.</summary>
internal static class PlanAirHours
{
    private const int MinutesPerHour = 60;

    /// <summary>The air at the start, at every full hour, and at the finish; empty where nothing could be placed.</summary>
    public static ImmutableArray<PlanAirAt> Of(Settled settled, DatedJob dated)
    {
        if (dated.Finish is not { } finish)
            return [];

        var (clock, place) = (settled.Place.Clock, settled.Place);
        var air = place.AirAround.Of([.. place.Job.Surfaces.Select(surface => surface.Id)]);
        var last = clock.MinuteAtOrAfter(finish);
        var first = (MinutesPerHour - clock.Origin.Minute) % MinutesPerHour;
        return
        [
            .. Enumerable.Range(0, Math.Max(0, (last - first) / MinutesPerHour) + 1)
                .Select(hour => first + (hour * MinutesPerHour))
                .Where(minute => minute < last)
                .Append(0)
                .Append(Math.Max(0, last))
                .Distinct()
                .Order()
                .Select(minute => At(clock.At(minute), air.At(minute))),
        ];
    }

    private static PlanAirAt At(LocalDateTime time, Climate.Conditions here) =>
        new(time, here.Air.DegreesCelsius, here.Surface.DegreesCelsius, here.DewPoint.DegreesCelsius);
}
