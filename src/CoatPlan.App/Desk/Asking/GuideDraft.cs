using CoatPlan.Jobs;

namespace CoatPlan.App.Desk.Asking;

/// <summary>A job as far as it was asked for: every answer as it was typed or picked, null for what was not asked yet.</summary>
internal sealed record GuideDraft
{
    /// <summary>Whom it is for.</summary>
    public GuidePurpose? Purpose { get; init; }

    /// <summary>What it is called.</summary>
    public string? Name { get; init; }

    /// <summary>us or metric.</summary>
    public string? Units { get; init; }

    /// <summary>The parts.</summary>
    public ImmutableArray<GuidePart>? Parts { get; init; }

    /// <summary>The cans.</summary>
    public ImmutableArray<GuideCan>? Cans { get; init; }

    /// <summary>Whether the work is outdoors.</summary>
    public bool? Outdoors { get; init; }

    /// <summary>Length, width and height of the room.</summary>
    public ImmutableArray<string>? Room { get; init; }

    /// <summary>Air that a fan leads outdoors; empty for none.</summary>
    public string? Exhaust { get; init; }

    /// <summary>The kind of weather: steady, daily or hours.</summary>
    public string? Weather { get; init; }

    /// <summary>Its figures, as they were typed one after the other.</summary>
    public ImmutableArray<string>? WeatherSays { get; init; }

    /// <summary>When work can begin.</summary>
    public string? Start { get; init; }

    /// <summary>The hours: days and their spans.</summary>
    public ImmutableArray<(string Days, ImmutableArray<string> Spans)>? Hours { get; init; }

    /// <summary>Whether hours are to be typed.</summary>
    public bool TypesHours { get; init; }

    /// <summary>When it must be done; empty for nothing asked.</summary>
    public string? FinishBy { get; init; }

    /// <summary>How many work, at each station.</summary>
    public string? People { get; init; }

    /// <summary>How many stations.</summary>
    public string? Stations { get; init; }

    /// <summary>Price of an hour of labour.</summary>
    public string? Labour { get; init; }

    /// <summary>Share added to materials; empty for none.</summary>
    public string? Markup { get; init; }

    /// <summary>Whether figures are metric.</summary>
    public bool IsMetric => Units == "metric";

    /// <summary>How the plan shall print.</summary>
    public PrintUnits PrintUnits => IsMetric ? PrintUnits.Metric : PrintUnits.Us;

    /// <summary>The draft with one of its parts changed.</summary>
    /// <param name="at">The part, from 0.</param>
    /// <param name="change">The change.</param>
    public GuideDraft WithPart(int at, Func<GuidePart, GuidePart> change) => this with { Parts = Parts!.Value.SetItem(at, change(Parts.Value[at])) };
}
