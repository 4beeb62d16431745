using CoatPlan.Areas;
using CoatPlan.Plans;

namespace CoatPlan.Explanations;

/// <summary>What can be asked of a surface.</summary>
internal static class SurfaceTopics
{
    public static IEnumerable<Topic> Of(Workings workings, Told told)
    {
        for (var i = 0; i < workings.Surfaces.Length; i++)
        {
            foreach (var topic in Of(workings, told, workings.Surfaces[i], workings.Measured[i], i))
                yield return topic;
        }
    }

    /// <summary>The true area of one piece, as an input of other figures.</summary>
    public static Explanation Area(MeasuredSurface measured, Told told)
    {
        var surface = measured.Surface;
        var outline = surface.Area is { } area
            ? Told.Given("outline of one piece", told.Format.Area(area), Told.JobFile, area.SquareMeters)
            : Told.Sum(
                "outline of one piece", told.Format.Area(measured.Outline), measured.Outline.SquareMeters,
                $"sum of its shapes ({string.Join(", ", surface.Shapes.Select(shape => shape.GetType().Name.Replace("Shape", "", StringComparison.Ordinal).ToLowerInvariant()))}), what is taken away subtracted",
                "mensuration of plane and round figures (published)");
        var relief = surface.Relief is { } said
            ? Told.Given("relief: true over outline area", Told.Plain(said), Told.JobFile, said)
            : Told.Given("relief: true over outline area", Told.Plain(measured.Relief), $"presets, the larger of {surface.Material} and {surface.Form} (estimate)", measured.Relief);
        return Told.Sum(
            $"true area of one {surface.Name}", told.Format.Area(measured.Piece), measured.Piece.SquareMeters, "outline × relief", "a plain product", outline, relief);
    }

    private static IEnumerable<Topic> Of(Workings workings, Told told, PlanSurface surface, MeasuredSurface measured, int at)
    {
        Topic Say(string field, string name, Func<Explanation> explain) =>
            new($"surfaces[{surface.Id}].{field}", [$"{name} {surface.Id}", $"surfaces[{at}].{field}", $"{name} {surface.Name}"], explain);

        yield return Say("areaM2", "area", () => Area(measured, told));
        yield return Say("relief", "relief", () => Area(measured, told).Inputs[1]);
        yield return Say("count", "pieces", () => Told.Given($"pieces of {surface.Name}", Told.Plain(surface.Count), Told.JobFile, surface.Count));
        yield return Say("packages", "packages", () => Told.Sum(
            $"packages of all coatings on {surface.Name}, before pooling", Told.Plain(surface.Cans), surface.Cans,
            "sum over its coats of area × coats ÷ area one package covers × what sprays past the form", "coverage and solids, see the inputs",
            [.. workings.Coats.All.Where(coat => coat.Surface == surface.Id).Select(coat => SupplyTopics.Coat(coat, told))]));
        if (surface.Tag is { } tag)
            yield return Say("tag", "tag", () => Told.Sum($"tag of {surface.Name}", Told.Plain(tag), tag, "numbered in the order of the job among what comes off", Told.JobFile));
        yield return Say("readyAt", "ready", () => FinishTopics.Ready(workings, surface));
    }
}
