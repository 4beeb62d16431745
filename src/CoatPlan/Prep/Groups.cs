namespace CoatPlan.Prep;

/// <summary>Which surfaces can be prepared and sprayed together.</summary>
internal static class Groups
{
    /// <summary>By system and by whether they stay; light colours first, since dark overspray shows on light, then in the order of the job.</summary>
    public static ImmutableArray<SurfaceGroup> Of(ImmutableArray<SettledSurface> surfaces) =>
    [
        .. surfaces
            .GroupBy(surface => (surface.Surface.System, surface.Surface.Stays))
            .OrderByDescending(group => group.First().Layers.LastOrDefault()?.Label.Lightness ?? 0)
            .Select(group => new SurfaceGroup(
                Id(group.Key.System, group.Key.Stays, surfaces),
                group.Key.System,
                group.Key.Stays,
                [.. group.Select(surface => surface.Id)])),
    ];

    private static string Id(string system, bool stays, ImmutableArray<SettledSurface> surfaces) =>
        stays && surfaces.Any(surface => surface.Surface.System == system && !surface.Surface.Stays) ? $"{system}-in-place" : system;
}
