using CoatPlan.Jobs;

namespace CoatPlan.App.Desk;

/// <summary>What is asked for before something new is put into a list or map of the job, so that it is whole from the start.</summary>
internal static class NewItem
{
    private static readonly ImmutableArray<string> Shaped = ["shape", "less"];

    // What a person would say of it besides what the job must have.
    private static readonly ImmutableDictionary<string, ImmutableArray<string>> Besides = new Dictionary<string, ImmutableArray<string>>(StringComparer.Ordinal)
    {
        ["surfaces"] = ["finish", "condition", "area"],
        ["mask"] = ["kind", "edge"],
        ["systems"] = ["coats"],
        ["products"] = ["preset"],
        ["consumables"] = ["pack"],
        ["done"] = ["surface", "operation", "at"],
        ["test-panels"] = ["used"],
    }.ToImmutableDictionary(StringComparer.Ordinal);

    /// <summary>Whether what is in a list are shapes, of which a kind is picked first.</summary>
    /// <param name="list">The list.</param>
    public static bool IsShape(JobPath list) => list.Steps is [.., { Key: { } key }] && Shaped.Contains(key);

    /// <summary>The rows of a new item that are asked for: what the job must have, and what a person would say besides.</summary>
    /// <param name="list">The list or map that it goes into.</param>
    /// <param name="item">What it could hold.</param>
    public static ImmutableArray<OutlineRow> Asked(JobPath list, Outline item)
    {
        var named = list.Steps.Select(step => step.Key).LastOrDefault(key => key is not null && Besides.ContainsKey(key));
        var besides = named is null ? [] : Besides[named];
        return [.. item.Rows.Where(row => row.Kind is not (OutlineKind.Map or OutlineKind.List) && (row.IsRequired || besides.Contains(row.Name)))];
    }
}
