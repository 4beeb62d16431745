namespace CoatPlan.Presets;

/// <summary>One kind of work of the contract, with when it comes and what it does to its neighbours.</summary>
public sealed record Operation
{
    /// <summary>The contract's word, such as <c>blow-off</c>.</summary>
    public required string Word { get; init; }

    /// <summary>What a step of it is called, in the imperative.</summary>
    public required string Title { get; init; }

    /// <summary>Stage of the whole job, 1 to 10.</summary>
    public required int Stage { get; init; }

    /// <summary>Order in the whole job, least first; unique.</summary>
    public required int Order { get; init; }

    /// <summary>Whether it raises dust that a wet film would catch.</summary>
    public required bool MakesDust { get; init; }

    /// <summary>Whether it may stop at the end of a working span and go on in the next.</summary>
    public required bool Breakable { get; init; }

    /// <summary>Whether it makes sparks, flame or glowing metal.</summary>
    public required bool HotWork { get; init; }

    /// <summary>Whether it throws paint into the air.</summary>
    public required bool Sprays { get; init; }

    /// <summary>Once for the whole job rather than once a surface.</summary>
    public required bool OncePerJob { get; init; }

    /// <summary>Why it is done, in one sentence.</summary>
    public required string Why { get; init; }

    /// <summary>How long it takes, the base rate first; at least one.</summary>
    public required ImmutableArray<OperationRate> Rates { get; init; }

    /// <summary>Where the row comes from.</summary>
    public required Provenance Provenance { get; init; }

    /// <summary>The slowest rate that one of the conditions calls for, or else the base rate.</summary>
    /// <param name="conditions">Condition words of the surface.</param>
    public OperationRate RateFor(ImmutableArray<string> conditions)
    {
        OperationRate? slowest = null;
        foreach (var rate in Rates)
        {
            if (rate.IsFor(conditions) && (slowest is null || rate.MinutesPerSquareMetre > slowest.MinutesPerSquareMetre))
                slowest = rate;
        }

        return slowest ?? Rates[0];
    }

    /// <summary>The rate of a name, such as <c>fine-line</c>.</summary>
    /// <param name="name">A name among <see cref="Rates"/>.</param>
    /// <exception cref="ArgumentException">No rate has the name.</exception>
    public OperationRate Rate(string name)
    {
        foreach (var rate in Rates)
        {
            if (rate.Name == name)
                return rate;
        }

        throw new ArgumentException($"{Word} has no rate '{name}': it has {string.Join(", ", Rates.Select(rate => rate.Name))}", nameof(name));
    }
}
