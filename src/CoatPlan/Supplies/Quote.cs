namespace CoatPlan.Supplies;

/// <summary>What a customer would be asked to pay. Each column of the lines adds to its sum, and the sums to the total, to the minor unit.</summary>
public sealed record Quote
{
    /// <summary>ISO 4217 code.</summary>
    public required string Currency { get; init; }

    /// <summary>Price of one hour of labour.</summary>
    public required decimal PerHour { get; init; }

    /// <summary>Person hours.</summary>
    public required double LabourHours { get; init; }

    /// <summary>The same by kind of work, in the order in which each first comes; they add to <see cref="LabourHours"/>.</summary>
    public required ImmutableArray<OperationHours> Hours { get; init; }

    /// <summary>Hours at the hourly price.</summary>
    public required decimal Labour { get; init; }

    /// <summary>Price of the paint that is bought.</summary>
    public required decimal Paint { get; init; }

    /// <summary>Price of what is used up besides, as far as prices are known.</summary>
    public required decimal Consumables { get; init; }

    /// <summary>Paint and what is used up besides.</summary>
    public required decimal Materials { get; init; }

    /// <summary>Markup on materials.</summary>
    public required decimal Markup { get; init; }

    /// <summary>Tax.</summary>
    public required decimal Tax { get; init; }

    /// <summary>Everything.</summary>
    public required decimal Total { get; init; }

    /// <summary>The total where hands are quick and few cans are used.</summary>
    public required decimal Low { get; init; }

    /// <summary>The total where hands are slow and many cans are used.</summary>
    public required decimal High { get; init; }

    /// <summary>A line a surface, in the job's order.</summary>
    public required ImmutableArray<QuoteLine> Lines { get; init; }

    /// <summary>What the total leaves out, a sentence each.</summary>
    public required ImmutableArray<string> NotIncluded { get; init; }
}
