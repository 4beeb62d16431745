namespace CoatPlan.Plans;

/// <summary>One dated piece of hands-on work.</summary>
/// <remarks>A wait is not a step: it stands in the <see cref="After"/> of the step that waits.</remarks>
public sealed record PlanStep
{
    /// <summary>Unique in the plan and stable for the same job.</summary>
    public required string Id { get; init; }

    /// <summary>An operation word of the contract, such as <c>scuff</c> or <c>coat</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>What a person would call it.</summary>
    public required string Title { get; init; }

    /// <summary>Ids of the surfaces worked on; empty for work on the whole job.</summary>
    public ImmutableArray<string> Surfaces { get; init; } = [];

    /// <summary>The batch that is sprayed together; null for work on the whole job.</summary>
    public string? Batch { get; init; }

    /// <summary>The station of a class that does it, from 1; null where the job has one crew.</summary>
    public int? Station { get; init; }

    /// <summary>Key of the product; null where none is applied.</summary>
    public string? Product { get; init; }

    /// <summary>Layer of the system, from 1; null for other work than coats.</summary>
    public int? Layer { get; init; }

    /// <summary>Coat within the layer, from 1; 0 is the mist coat; null for other work.</summary>
    public int? Coat { get; init; }

    /// <summary>Full coats in the layer; null for other work.</summary>
    public int? Of { get; init; }

    /// <summary>Whether this is a mist coat.</summary>
    public bool Mist { get; init; }

    /// <summary>Local wall time, whole minutes.</summary>
    public required LocalDateTime Start { get; init; }

    /// <summary>Local wall time, whole minutes, breaks included.</summary>
    public required LocalDateTime End { get; init; }

    /// <summary>Hands-on clock minutes, breaks left out.</summary>
    public required double HandsMin { get; init; }

    /// <summary>People busy all that time.</summary>
    public required int People { get; init; }

    /// <summary>Whether it puts dust into the air.</summary>
    public bool MakesDust { get; init; }

    /// <summary>Whether it puts spray into the air.</summary>
    public bool Spray { get; init; }

    /// <summary>What it waits for.</summary>
    public ImmutableArray<PlanWait> After { get; init; } = [];

    /// <summary>Air at its start, °C.</summary>
    public required double AirC { get; init; }

    /// <summary>The coldest piece at its start, °C.</summary>
    public required double SurfaceC { get; init; }

    /// <summary>Dew point at its start, °C.</summary>
    public required double DewPointC { get; init; }

    /// <summary>Relative humidity at its start, 0 to 1.</summary>
    public required double Humidity { get; init; }

    /// <summary>Coats: the latest start that still meets windows, light and dew; null elsewhere.</summary>
    public LocalDateTime? LastSafeStart { get; init; }

    /// <summary>Coats: what a start after <see cref="LastSafeStart"/> would meet; null elsewhere and where the coat is on already.</summary>
    public string? AfterLastSafeStart { get; init; }

    /// <summary>Why it is done.</summary>
    public required string Why { get; init; }

    /// <summary>How to do it and what to mind, one sentence each: which part is done which way, what is looked at before it goes on; none for a coat.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>Why it starts no earlier.</summary>
    public required string WaitsFor { get; init; }

    /// <summary>How much later it could start without moving the finish, whole minutes.</summary>
    public int SlackMin { get; init; }

    /// <summary>Coats: contents to spray, ml; null elsewhere.</summary>
    public double? Ml { get; init; }

    /// <summary>Coats: how the passes are laid; null elsewhere, and for a brush.</summary>
    public PlanPasses? Passes { get; init; }

    /// <summary>Limits to check before it starts; null for work that has none.</summary>
    public PlanLimits? Limits { get; init; }

    /// <summary>Whether it is done already, so that its times are facts.</summary>
    public bool Done { get; init; }
}
