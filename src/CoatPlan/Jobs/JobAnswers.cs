namespace CoatPlan.Jobs;

/// <summary>What is asked before a new job file is written.</summary>
public sealed record JobAnswers
{
    /// <summary>What the job is called.</summary>
    public required string Name { get; init; }

    /// <summary>When the work can begin; local wall time, whole minutes.</summary>
    public required LocalDateTime Start { get; init; }

    /// <summary>The units of the figures in the new file, and of plans.</summary>
    public PrintUnits Units { get; init; } = PrintUnits.Us;

    /// <summary>Whether the work is done outdoors.</summary>
    public bool Outdoors { get; init; }

    /// <summary>People at each station, 1 or more.</summary>
    public int People { get; init; } = 1;

    /// <summary>Stations that each do all the surfaces, 1 or more.</summary>
    public int Stations { get; init; } = JobDefaults.Stations;
}
