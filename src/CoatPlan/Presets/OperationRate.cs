namespace CoatPlan.Presets;

/// <summary>Hands-on minutes of an operation done one way, flat work at bench height.</summary>
public sealed record OperationRate
{
    /// <summary>Which way it is done, such as <c>wire-wheel-heavy</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Condition words that call for this way; empty for the base rate and for rates named by an operation's own rule.</summary>
    public required ImmutableArray<string> For { get; init; }

    /// <summary>Minutes for each m² of true area.</summary>
    public required double MinutesPerSquareMetre { get; init; }

    /// <summary>Minutes for each part, whatever its area.</summary>
    public required double FixedMinutes { get; init; }

    /// <summary>Minutes for each metre of edge.</summary>
    public required double MinutesPerMetre { get; init; }

    /// <summary>Minutes for each plug, bag or cap.</summary>
    public required double MinutesPerPlug { get; init; }

    /// <summary>Minutes for each can or tin opened.</summary>
    public required double MinutesPerPackage { get; init; }

    /// <summary>Minutes of dwell that need nobody before the step is done.</summary>
    public required double DwellMinutes { get; init; }

    /// <summary>Field to usual range, as written.</summary>
    public required ImmutableDictionary<string, string> Ranges { get; init; }

    /// <summary>Where the rate comes from.</summary>
    public required Provenance Provenance { get; init; }

    /// <summary>Whether one of some condition words calls for this way.</summary>
    /// <param name="conditions">Condition words of a surface.</param>
    internal bool IsFor(ImmutableArray<string> conditions)
    {
        foreach (var condition in conditions)
        {
            if (For.Contains(condition, StringComparer.Ordinal))
                return true;
        }

        return false;
    }
}
