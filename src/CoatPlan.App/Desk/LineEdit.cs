namespace CoatPlan.App.Desk;

/// <summary>A value that is being typed.</summary>
internal sealed class LineEdit
{
    /// <summary>What is asked for.</summary>
    public required string Asks { get; init; }

    /// <summary>Whether it is typed in the chosen cell of the table, and not on the line below.</summary>
    public required bool InCell { get; init; }

    /// <summary>What stands there at first, and what was typed when it was refused.</summary>
    public required string Typed { get; set; }

    /// <summary>An example of what can be typed; empty for none.</summary>
    public string Example { get; init; } = "";

    /// <summary>Takes what was typed; returns why not, or null where it was taken.</summary>
    public required Func<string, string?> Take { get; init; }

    /// <summary>Why what was typed was refused; null while it was not.</summary>
    public string? Complaint { get; set; }
}
