using CoatPlan.Jobs.Yaml;

namespace CoatPlan.Jobs.Editing;

/// <summary>A value that was found on the way along a path.</summary>
/// <param name="Node">The value.</param>
/// <param name="At">Where it stands.</param>
/// <param name="Parent">The list or map that holds it; null: it is the root.</param>
/// <param name="Index">Its index in the list, or its entry's in the map.</param>
internal sealed record Found(Node Node, Stretch At, Found? Parent, int Index)
{
    /// <summary>Its entry in the map that holds it; null: no map does.</summary>
    public MapEntry? Entry => Parent?.Node is MapNode map ? map.Entries[Index] : null;

    /// <summary>Whether it stands in brackets or braces of others.</summary>
    public bool IsInFlow => Parent?.Node is MapNode { IsFlow: true } or ListNode { IsFlow: true };
}
