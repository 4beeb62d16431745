using CoatPlan.Jobs;

namespace CoatPlan.Prep;

/// <summary>What is known of a job as a whole, as the words that rules ask for.</summary>
internal static class JobTraits
{
    /// <summary>The job's own words.</summary>
    public static Traits Of(Job job) => new TraitsBuilder()
        .With("work-on", [WorkOn(job)])
        .With("checks", [.. Checks(job.Checks)])
        .Saying("strips", job.Surfaces.Any(surface => !surface.Stays))
        .Saying("ignition", !job.Place.Ignition.IsEmpty)
        .With("heater", [job.Place.Hold is null ? "none" : job.Place.Heater == HeaterKind.Open ? "open" : "sealed"])
        .Saying("outdoors", job.Place.Outdoors)
        .With("stations", [job.Crew.Stations > 1 ? "many" : "one"])
        .Done();

    /// <summary>A vehicle, parts that come off one, or loose pieces on the bench.</summary>
    /// <remarks>
    /// Contract: a surface that does not stay is removed, tagged and refitted. Only where nothing stays, nothing of a vehicle is named and several
    /// stations each have a piece of their own is there no vehicle to take them from.
    /// </remarks>
    private static string WorkOn(Job job)
    {
        var vehicle = job.Checks is not null || job.Surfaces.Any(surface => surface.Stays);
        var loose = job.Crew.Stations > 1 && job.Surfaces.All(surface => surface.Near.IsEmpty);
        return vehicle ? "vehicle" : loose ? "bench" : "parts";
    }

    private static IEnumerable<string> Checks(Checks? checks)
    {
        if (checks is { CylinderPressures.IsEmpty: false })
            yield return "cylinders";
        if (checks?.PressureTest is not null)
            yield return "pressure";
    }
}
