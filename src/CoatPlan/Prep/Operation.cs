using UnitsNet;

namespace CoatPlan.Prep;

/// <summary>One thing to be done, not yet dated, with the reason why it is done.</summary>
/// <remarks>
/// "Scuff the inner fenders" is one operation. Coats are not operations of this room: the timetable puts them between the last of stage 6
/// and the first of stage 8 of the same surfaces.
/// </remarks>
public sealed record Operation
{
    /// <summary>Readable and the same for the same job: the word, a way where one word has several, and the batch, as in <c>scuff/black-over-paint</c>.</summary>
    public required string Id { get; init; }

    /// <summary>The contract's word, as in <c>solvent-clean</c>.</summary>
    public required string Word { get; init; }

    /// <summary>Stage of the whole job, 1 to 10; 7 is the coats'.</summary>
    public required int Stage { get; init; }

    /// <summary>Place inside the stage; operations with the lower number come first.</summary>
    public required int Order { get; init; }

    /// <summary>What to do, in a few words that can stand at the head of a line.</summary>
    public required string Title { get; init; }

    /// <summary>How to do it and what to mind, one sentence each.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>Once for the job, or for the surfaces of a batch.</summary>
    public required OperationScope Scope { get; init; }

    /// <summary>The batch it was made for; empty for the whole job.</summary>
    public string Batch { get; init; } = "";

    /// <summary>Ids of the surfaces it touches, in the order of the job; empty where it is about the vehicle as a whole.</summary>
    public required ImmutableArray<string> Surfaces { get; init; }

    /// <summary>Hands-on time, whole seconds, of one person.</summary>
    public required Duration Hands { get; init; }

    /// <summary>The same by surface; sums to <see cref="Hands"/> where there are surfaces.</summary>
    public ImmutableArray<SurfaceWork> Work { get; init; } = [];

    /// <summary>People busy all that time.</summary>
    public int People { get; init; } = 1;

    /// <summary>Puts dust in the air, so it may not run while a film in the same room is not dust-free.</summary>
    public required bool MakesDust { get; init; }

    /// <summary>May stop at the end of a working span and go on in the next.</summary>
    public required bool Breakable { get; init; }

    /// <summary>Has a flame, a spark or a glowing element, so it may not run while vapour is present.</summary>
    public required bool HotWork { get; init; }

    /// <summary>Why it is done: a sentence that names the cause and, in brackets, the source.</summary>
    public required string Why { get; init; }

    /// <summary>Ids of the operations that must be done before.</summary>
    public required ImmutableArray<string> After { get; init; }

    /// <summary>Words of operations that must be done on every surface of the job before, as <c>strip-down</c> before anything dusty beside it.</summary>
    public ImmutableArray<string> AfterEvery { get; init; } = [];

    /// <summary>The wait that follows it.</summary>
    public OperationWait Wait { get; init; } = OperationWait.None;

    /// <summary>For masking: what is covered; empty elsewhere.</summary>
    public ImmutableArray<MaskedItem> Masked { get; init; } = [];

    /// <summary>For masking: taped edge in all.</summary>
    public Length MaskEdge => Masked.Aggregate(Length.Zero, (sum, item) => sum + item.Edge);

    /// <summary>For masking: area under paper or film in all.</summary>
    public Area MaskArea => Masked.Aggregate(Area.Zero, (sum, item) => sum + item.Area);

    /// <summary>For abrading: the grits one after another, as in P120, P180, P320; empty elsewhere.</summary>
    public ImmutableArray<string> Grits { get; init; } = [];
}
