namespace CoatPlan.Timetable;

/// <summary>Surfaces of one system that are prepared and coated together at one station.</summary>
internal sealed record Batch
{
    /// <summary>Readable and unique among the batches of a station, such as <c>black-on-metal-2</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The station of a class, from 1; null where the job has one crew.</summary>
    public required int? Station { get; init; }

    /// <summary>Key of the system.</summary>
    public required string System { get; init; }

    /// <summary>Whether its surfaces stay on the vehicle, so that they take no place on the rack.</summary>
    public required bool Stays { get; init; }

    /// <summary>Ids of the surfaces, at least one.</summary>
    public required ImmutableArray<string> Surfaces { get; init; }

    /// <summary>Pieces in all.</summary>
    public required int Pieces { get; init; }

    /// <summary>Its coats, first to last, at least one.</summary>
    public required ImmutableArray<CoatTask> Coats { get; init; }

    /// <summary>What is done around its coats: stages 3 to 6, 8 and 9.</summary>
    public required ImmutableArray<Prep.Operation> Operations { get; init; }

    /// <summary>Its name with its station, unique in the job.</summary>
    public string Key => StationId(Name, Station);

    /// <summary>An id made unique for a station of a class.</summary>
    public static string StationId(string id, int? station) =>
        station is { } number ? FormattableString.Invariant($"{id}@{number}") : id;

    /// <summary>The id that was made unique for a station of a class.</summary>
    public static string IdWithoutStation(string id, int? station) => id[..^StationId("", station).Length];
}
