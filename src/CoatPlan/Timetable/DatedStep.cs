using CoatPlan.Climate;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Timetable;

/// <summary>One piece of hands-on work with its date.</summary>
public sealed record DatedStep
{
    /// <summary>Unique in the job and stable for the same job.</summary>
    public required string Id { get; init; }

    /// <summary>An operation word of the contract.</summary>
    public required string Word { get; init; }

    /// <summary>What a person would call it.</summary>
    public required string Title { get; init; }

    /// <summary>Ids of the surfaces; empty for work on the whole job.</summary>
    public required ImmutableArray<string> Surfaces { get; init; }

    /// <summary>The batch; null for work on the whole job.</summary>
    public required string? Batch { get; init; }

    /// <summary>The station, from 1; null where the job has one crew.</summary>
    public required int? Station { get; init; }

    /// <summary>The operation that it is; null for a coat.</summary>
    public Prep.Operation? Operation { get; init; }

    /// <summary>The label of the product applied; null where none is.</summary>
    public Label? Label { get; init; }

    /// <summary>Layer, from 1; null for other work than coats.</summary>
    public int? Layer { get; init; }

    /// <summary>Coat within the layer; 0 is the mist coat; null for other work.</summary>
    public int? Coat { get; init; }

    /// <summary>Full coats in the layer; null for other work.</summary>
    public int? Of { get; init; }

    /// <summary>First minute, from the job's start.</summary>
    public required int From { get; init; }

    /// <summary>The minute after the last one, breaks included.</summary>
    public required int To { get; init; }

    /// <summary>The wall time of <see cref="From"/>.</summary>
    public required LocalDateTime Start { get; init; }

    /// <summary>The wall time of <see cref="To"/>.</summary>
    public required LocalDateTime End { get; init; }

    /// <summary>Hands-on clock minutes.</summary>
    public required int HandsMinutes { get; init; }

    /// <summary>People busy all that time.</summary>
    public required int People { get; init; }

    /// <summary>Whether it puts dust into the air.</summary>
    public required bool MakesDust { get; init; }

    /// <summary>Whether it puts spray into the air.</summary>
    public required bool Sprays { get; init; }

    /// <summary>What it waits for.</summary>
    public required ImmutableArray<DatedWait> Waits { get; init; }

    /// <summary>Air, dew point and the coldest piece at its start.</summary>
    public required Conditions Conditions { get; init; }

    /// <summary>Coats: the latest start that still meets windows, light and dew; null elsewhere.</summary>
    public LocalDateTime? LastSafeStart { get; init; }

    /// <summary>Coats: what a start after <see cref="LastSafeStart"/> would meet; null elsewhere and where the coat is on already.</summary>
    public string? AfterLastSafeStart { get; init; }

    /// <summary>Coats: contents applied; null elsewhere and where unknown.</summary>
    public Volume? Volume { get; init; }

    /// <summary>Coats: contents applied by mass; null elsewhere and where unknown.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Coats: the minute at which the film can be touched; null elsewhere.</summary>
    public int? TouchAt { get; init; }

    /// <summary>Coats: the minute at which the piece can be handled; null elsewhere.</summary>
    public int? HandleAt { get; init; }

    /// <summary>Coats: the wall time at which the film reaches service; null elsewhere.</summary>
    public LocalDateTime? ServiceAt { get; init; }

    /// <summary>Why it is done.</summary>
    public required string Why { get; init; }

    /// <summary>Why it starts no earlier.</summary>
    public required string WaitsFor { get; init; }

    /// <summary>How much later it could start without moving the finish, minutes.</summary>
    public required int SlackMinutes { get; init; }

    /// <summary>Whether it is done already.</summary>
    public required bool Done { get; init; }

    /// <summary>Whether this is a mist coat.</summary>
    public bool Mist => Coat == 0;
}
