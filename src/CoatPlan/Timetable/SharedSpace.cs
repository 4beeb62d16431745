namespace CoatPlan.Timetable;

/// <summary>What steps leave in the air of the work place, and others must keep clear of.</summary>
internal static class SharedSpace
{
    /// <summary>A film that would take dust; its key is the product.</summary>
    public const int WetFilm = 1;

    /// <summary>Dust in the air.</summary>
    public const int Dust = 2;

    /// <summary>Vapour that could burn.</summary>
    public const int Vapour = 3;

    /// <summary>Flame, spark or heat that could light vapour.</summary>
    public const int Heat = 4;

    /// <summary>Name of the resource of spots at which spraying goes on.</summary>
    public const string SpraySpots = "spray spots";

    /// <summary>Name of the resource of places where pieces hang or lie wet.</summary>
    public const string Rack = "rack";

    /// <summary>Name of the resource of people at a station.</summary>
    public static string People(int? station) => Batch.StationId("people", station);
}
