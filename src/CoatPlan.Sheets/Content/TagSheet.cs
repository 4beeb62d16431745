using CoatPlan.Plans;

namespace CoatPlan.Sheets.Content;

/// <summary>Tags to cut out for what comes off, and the list by which it goes back on.</summary>
public static class TagSheet
{
    private static readonly ImmutableArray<string> ToWrite = ["bag", "photograph", "which way round", "fasteners"];

    /// <summary>What the sheet says; null where nothing comes off.</summary>
    /// <param name="plan">The plan.</param>
    public static Sheet? Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var loose = plan.Surfaces.Where(surface => surface.Tag is not null).ToImmutableArray();
        return loose.IsEmpty ? null : new Sheet("tags", "Tags", plan.Job, [.. Cut(loose, plan), .. Refit(plan), .. Deferral.Of(plan)]);
    }

    private static IEnumerable<Block> Cut(ImmutableArray<PlanSurface> loose, Plan plan)
    {
        int?[] stations = [.. plan.Steps.Select(step => step.Station).Distinct().Where(station => station is not null).Order()];
        yield return new Paragraph("Cut along the dashes. The tag goes on the part, its number on the bag of fasteners and into the photograph.");
        yield return new Tags(
        [
            .. (stations.Length == 0 ? [null] : stations).SelectMany(station => loose.SelectMany(surface =>
                Enumerable.Range(1, surface.Count).Select(piece => TagOf(surface, piece, station, plan)))),
        ]);
    }

    private static Tag TagOf(PlanSurface surface, int piece, int? station, Plan plan)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        if (station is { } number)
            lines.Add($"Station {PlanWords.Count(number)}");
        if (surface.Count > 1)
            lines.Add($"Piece {PlanWords.Count(piece)} of {PlanWords.Count(surface.Count)}");
        if (StepOn(surface, "strip-down", station, plan) is { } off)
            lines.Add($"Comes off {PlanWords.Moment(off.Start)}");
        if (station is null && surface.ReadyAt is { } ready)
            lines.Add($"Can be handled from {PlanWords.Moment(ready)}");
        if (StepOn(surface, "refit", station, plan) is { } on)
            lines.Add($"Goes back on {PlanWords.Moment(on.Start)}");
        return new Tag(PlanWords.Count(surface.Tag!.Value), surface.Name, lines.ToImmutable(), ToWrite);
    }

    private static PlanStep? StepOn(PlanSurface surface, string kind, int? station, Plan plan) =>
        plan.Steps.FirstOrDefault(step => step.Kind == kind && step.Station == station && step.Surfaces.Contains(surface.Id));

    // In the order of the work; within one step the last off is the first back on.
    private static IEnumerable<Block> Refit(Plan plan)
    {
        ImmutableArray<ImmutableArray<string>> rows =
        [
            .. plan.Steps.Where(step => step.Kind == "refit").SelectMany(step => plan.Surfaces
                .Where(surface => surface.Tag is not null && step.Surfaces.Contains(surface.Id))
                .Reverse()
                .Select(surface => Row(surface, step))),
        ];
        if (rows.IsEmpty)
            yield break;

        yield return new NewPage("");
        yield return new Heading("Back on, in this order");
        yield return new Grid(
            [new Column("", 0.5), new Column("Tag", 0.7), new Column("Part", 4), new Column("Can be handled from", 2.5), new Column("Planned", 2.5), new Column("Really", 2), new Column("Torque, note", 3)],
            rows);
    }

    private static ImmutableArray<string> Row(PlanSurface surface, PlanStep step)
    {
        var station = step.Station is null ? "" : $", {StationWords.Of([step.Station])}";
        return
        [
            PlanWords.Tick,
            PlanWords.Count(surface.Tag!.Value),
            PlanWords.Name(surface) + station,
            surface.ReadyAt is { } ready ? PlanWords.Moment(ready) : "",
            PlanWords.Moment(step.Start),
            PlanWords.ToWrite,
            PlanWords.ToWrite,
        ];
    }
}
