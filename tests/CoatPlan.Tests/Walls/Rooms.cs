namespace CoatPlan.Tests.Walls;

/// <summary>The rooms of the library in the order in which a job walks through them, and which of them each may name.</summary>
internal static class Rooms
{
    /// <summary>The room at the root, which puts a plan together.</summary>
    public const string Root = "(root)";

    /// <summary>Each room with the rooms it may name. An arrow that nothing uses is taken out; a new one is a decision.</summary>
    public static readonly ImmutableArray<(string Room, ImmutableArray<string> MayName)> Arrows =
    [
        ("Quantities", []),
        ("Problems", ["Quantities"]),
        ("Jobs", ["Quantities", "Problems"]),
        ("Presets", ["Quantities", "Problems", "Jobs"]),
        ("Areas", ["Jobs", "Presets"]),
        ("Climate", ["Quantities", "Problems", "Jobs", "Presets"]),
        ("Prep", ["Quantities", "Problems", "Jobs", "Presets", "Areas"]),
        ("Paint", ["Jobs", "Presets", "Areas", "Prep"]),
        ("Vapour", ["Jobs", "Presets"]),
        ("Scheduling", []),
        ("Timetable", ["Quantities", "Jobs", "Presets", "Climate", "Prep", "Paint", "Vapour", "Scheduling"]),
        ("Outlook", ["Jobs", "Presets", "Climate", "Prep", "Paint", "Scheduling", "Timetable"]),
        ("Obstacles", ["Quantities", "Jobs", "Presets", "Climate", "Scheduling", "Timetable"]),
        ("Plans", []),
        ("Air", ["Quantities", "Jobs", "Presets", "Prep", "Vapour"]),
        ("Supplies", ["Problems", "Jobs", "Presets", "Areas", "Prep", "Paint", "Timetable"]),
        ("Cautions", ["Problems", "Jobs", "Presets", "Prep"]),
        ("Composition", ["Quantities", "Jobs", "Presets", "Areas", "Climate", "Prep", "Paint", "Vapour", "Timetable", "Obstacles", "Plans", "Air", "Supplies", "Cautions"]),
        ("Explanations", ["Quantities", "Problems", "Jobs", "Presets", "Areas", "Prep", "Paint", "Timetable", "Plans", "Air", "Supplies"]),
        (Root, ["Quantities", "Problems", "Jobs", "Presets", "Areas", "Climate", "Prep", "Paint", "Vapour", "Scheduling", "Timetable", "Outlook", "Obstacles", "Plans", "Air", "Supplies", "Cautions", "Composition", "Explanations"]),
    ];

    /// <summary>The room of a namespace of the library; null for a namespace that is none of its own.</summary>
    /// <param name="name">A namespace.</param>
    /// <param name="root">The namespace of the house.</param>
    public static string? Of(string name, string root)
    {
        if (name == root)
        {
            return Root;
        }

        return name.StartsWith(root + ".", StringComparison.Ordinal) ? name[(root.Length + 1)..].Split('.')[0] : null;
    }

    /// <summary>The uses between rooms that the table does not allow.</summary>
    public static IEnumerable<TypeUse> Forbidden(IEnumerable<TypeUse> uses, string root, IReadOnlyDictionary<string, ImmutableArray<string>> allowed) =>
        uses.Where(use => Of(use.FromNamespace, root) is { } from && Of(use.ToNamespace, root) is { } to && from != to
            && !(allowed.TryGetValue(from, out var names) && names.Contains(to)));
}
