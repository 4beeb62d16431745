using CoatPlan.Problems;
using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>A surface to be refinished.</summary>
public sealed record JobSurface
{
    /// <summary>Id, unique in the job.</summary>
    public required string Id { get; init; }

    /// <summary>What the person calls it.</summary>
    public required string Name { get; init; }

    /// <summary>Pieces, 1 or more.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Material, in the contract's spelling.</summary>
    public required string Material { get; init; }

    /// <summary>Old finish, in the contract's spelling.</summary>
    public string Finish { get; init; } = JobDefaults.Finish;

    /// <summary>Conditions, in the contract's spelling; one or more.</summary>
    public ImmutableArray<string> Conditions { get; init; } = JobDefaults.Conditions;

    /// <summary>Area of one piece as a figure; null where <see cref="Shapes"/> are given.</summary>
    public Area? Area { get; init; }

    /// <summary>Shapes that make up one piece; empty where <see cref="Area"/> is given.</summary>
    public ImmutableArray<Shape> Shapes { get; init; } = [];

    /// <summary>Plus or minus share of the area, 0 to less than 1; 15 % for a figure and 5 % for shapes unless said.</summary>
    public required Ratio Spread { get; init; }

    /// <summary>True over outline area, 1 or more; null: by material and form.</summary>
    public double? Relief { get; init; }

    /// <summary>How much spray misses: <c>panel</c>, <c>casting</c>, <c>bracket</c> or <c>tube</c>.</summary>
    public string Form { get; init; } = JobDefaults.Form;

    /// <summary>Thickness of the metal; null: by preset.</summary>
    public Length? Gauge { get; init; }

    /// <summary>Whether it stays on the vehicle; otherwise it is removed, tagged and refitted.</summary>
    public bool Stays { get; init; }

    /// <summary>Which way its faces look.</summary>
    public FaceDirection Faces { get; init; } = FaceDirection.Mixed;

    /// <summary>Hottest in service; null: none said.</summary>
    public Temperature? Heat { get; init; }

    /// <summary>How light it is now; null: by finish.</summary>
    public Lightness? Lightness { get; init; }

    /// <summary>Share that is bare after prep, 0 to 1; null: by condition.</summary>
    public Ratio? BareShare { get; init; }

    /// <summary>Result of a test for lead; null: none made.</summary>
    public LeadTestResult? LeadTest { get; init; }

    /// <summary>What is near it, in the contract's spelling.</summary>
    public ImmutableArray<string> Near { get; init; } = [];

    /// <summary>Key of its paint system.</summary>
    public required string System { get; init; }

    /// <summary>What must be masked on one piece.</summary>
    public ImmutableArray<MaskItem> Masks { get; init; } = [];

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
