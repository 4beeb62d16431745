using CoatPlan.Jobs;
using UnitsNet;

namespace CoatPlan.Areas;

/// <summary>A surface with how much there is of it.</summary>
/// <remarks>
/// Two inner fenders of 8 ft² outline, stamped with beads: <see cref="Outline"/> is 8 ft², <see cref="Piece"/> 9.2 ft² at relief 1.15, and
/// <see cref="Total"/> twice that. Everything that is painted, sanded or wiped counts <see cref="Piece"/> or <see cref="Total"/>.
/// </remarks>
public sealed record MeasuredSurface
{
    /// <summary>The surface as the job has it.</summary>
    public required JobSurface Surface { get; init; }

    /// <summary>True over outline area that was used, 1 or more.</summary>
    public required double Relief { get; init; }

    /// <summary>Outline of one piece, relief not counted.</summary>
    public required Area Outline { get; init; }

    /// <summary>True area of one piece, relief counted.</summary>
    public required Area Piece { get; init; }

    /// <summary>True area of all pieces, with how well it is known.</summary>
    public required AreaRange Total { get; init; }

    /// <summary>Share of it that is bare metal or plastic once it is prepared, 0 to 1.</summary>
    public required Ratio BareShare { get; init; }

    /// <summary>Thickness that was used, for how fast the metal follows the air.</summary>
    public required Length Gauge { get; init; }

    /// <summary>Faces of the metal that the air reaches, 1 or 2: a casting is reached from outside only.</summary>
    public required int FacesInAir { get; init; }

    /// <summary>The surface's id.</summary>
    public string Id => Surface.Id;

    /// <summary>Pieces, 1 or more.</summary>
    public int Count => Surface.Count;
}
