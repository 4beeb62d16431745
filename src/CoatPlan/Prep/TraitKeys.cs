using System.Collections.Frozen;

namespace CoatPlan.Prep;

/// <summary>The keys that rules may ask for.</summary>
internal static class TraitKeys
{
    /// <summary>Those of a surface and of its job; rows of a file's <c>traits</c> add to them.</summary>
    public static readonly ImmutableArray<string> All =
    [
        "material", "family", "finish", "painted", "gloss", "condition", "form", "stays", "near", "mask", "masks", "name", "bare-spots", "lead",
        "layer", "role", "hazard", "heat", "heat-cured", "first", "over", "rust", "tooth", "softened-by-brake-fluid", "patch-test",
        "work-on", "checks", "strips", "ignition", "heater", "outdoors", "stations", SettledTraits.Does, SettledTraits.Dust,
    ];

    /// <summary>The same by name.</summary>
    public static readonly ImmutableArray<string> Sorted = [.. All.Order(StringComparer.Ordinal)];

    private static readonly FrozenDictionary<string, int> Places =
        Sorted.Select((key, place) => (key, place)).ToFrozenDictionary(pair => pair.key, pair => pair.place, StringComparer.Ordinal);

    /// <summary>Place of a key among <see cref="Sorted"/>; −1 for one that a file added.</summary>
    public static int PlaceOf(string key) => Places.TryGetValue(key, out var place) ? place : -1;
}
