using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Paint;

/// <summary>The times that a product is taken up, and what is sprayed of it while the same packages are open.</summary>
/// <param name="Count">Times that it is taken up.</param>
/// <param name="Openings">What is sprayed from packages that are opened together.</param>
internal sealed record SpraySessions(int Count, ImmutableArray<SprayOpening> Openings)
{
    /// <summary>The sessions of one product.</summary>
    /// <remarks>
    /// Coats at one station that follow each other within <c>session-gap</c> are one session. All sessions share packages, but an activated two-part
    /// package serves only what starts within its pot life.
    /// </remarks>
    public static SpraySessions Of(
        Label label, ImmutableArray<SurfaceCoat> coats, ImmutableArray<SprayedCoat> sprayed, int stations, Figures figures)
    {
        if (sprayed.IsEmpty)
            return NotYetDated(coats, stations);

        var count = sprayed.GroupBy(coat => coat.Station).Sum(station => Sessions(station, figures.Time("session-gap")));
        var byPlace = coats.ToLookup(coat => (coat.Surface, coat.Layer, coat.Coat));
        var groups = label is { Drying: DryingKind.TwoPart, UseWithin: { } potLife } ? ByPotLife(sprayed, potLife) : [sprayed];
        return new SpraySessions(count,
        [
            .. groups.Select(group => new SprayOpening(
                [.. group.SelectMany(step => step.Surfaces.SelectMany(id => byPlace[(id, step.Layer, step.Coat)]))], 1,
                group.GroupBy(coat => coat.Station).Sum(station => Sessions(station, figures.Time("session-gap"))))),
        ]);
    }

    private static SpraySessions NotYetDated(ImmutableArray<SurfaceCoat> coats, int stations)
    {
        var count = stations * coats.Select(coat => coat.Layer).Distinct().Count();
        return new SpraySessions(count, coats.IsEmpty ? [] : [new SprayOpening(coats, stations, count)]);
    }

    private static int Sessions(IEnumerable<SprayedCoat> coats, Duration gap)
    {
        var sessions = 0;
        LocalDateTime? until = null;
        foreach (var coat in coats.OrderBy(coat => coat.Start))
        {
            if (until is not { } last || coat.Start > last.PlusSeconds((long)gap.TotalSeconds))
                sessions++;
            until = until is { } before && before > coat.End ? before : coat.End;
        }

        return sessions;
    }

    private static IEnumerable<ImmutableArray<SprayedCoat>> ByPotLife(ImmutableArray<SprayedCoat> sprayed, Duration potLife)
    {
        var group = new List<SprayedCoat>();
        foreach (var coat in sprayed.OrderBy(coat => coat.Start))
        {
            if (group.Count > 0 && coat.End > group[0].Start.PlusSeconds((long)potLife.TotalSeconds))
            {
                yield return [.. group];
                group.Clear();
            }

            group.Add(coat);
        }

        if (group.Count > 0)
            yield return [.. group];
    }
}
