using CoatPlan.Presets;

namespace CoatPlan.App.Desk.Asking;

/// <summary>A part as far as it was asked for; null for what was not asked yet.</summary>
internal sealed record GuidePart
{
    /// <summary>What follows a can that goes just on bare spots.</summary>
    public const string BareOnly = ", bare spots only";

    /// <summary>The usual piece it is; null for another one.</summary>
    public Piece? Piece { get; init; }

    /// <summary>What the person calls it.</summary>
    public string? Name { get; init; }

    /// <summary>How many.</summary>
    public string? Count { get; init; }

    /// <summary>What it is made of.</summary>
    public string? Material { get; init; }

    /// <summary>What is on it.</summary>
    public string? Finish { get; init; }

    /// <summary>What is wrong with it.</summary>
    public ImmutableArray<string>? Conditions { get; init; }

    /// <summary>Area of one.</summary>
    public string? Area { get; init; }

    /// <summary>Whether it stays on the vehicle.</summary>
    public bool? Stays { get; init; }

    /// <summary>The cans that go on it, first to last.</summary>
    public ImmutableArray<string> Layers { get; init; } = [];

    /// <summary>Whether nothing more goes on it.</summary>
    public bool HasAllLayers { get; init; }

    /// <summary>The can of a layer.</summary>
    /// <param name="layer">The layer.</param>
    public static string CanOf(string layer) => layer.EndsWith(BareOnly, StringComparison.Ordinal) ? layer[..^BareOnly.Length] : layer;

    /// <summary>What to call it in a question.</summary>
    public string Called => Name ?? "the piece";
}
