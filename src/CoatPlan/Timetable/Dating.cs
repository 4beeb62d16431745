using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>Turns what the scheduling room placed into dated steps with their waits and reasons.</summary>
internal static class Dating
{
    /// <summary>The steps that were placed, by start, then by the order of the work.</summary>
    public static ImmutableArray<DatedStep> Steps(Arranged arranged, Workplace place)
    {
        var (drawn, outcome) = (arranged.Drawn, arranged.Outcome);
        // What binds the steps is looked at aside, while they are dated.
        var looking = outcome.Schedule is { } schedule ? Task.Run(() => Scheduler.Look(drawn.Network, schedule)) : null;
        var dated = Enumerable.Range(0, drawn.Nodes.Length)
            .Where(index => !drawn.Nodes[index].IsMilestone && outcome.Placed[index] is not null)
            .OrderBy(index => outcome.Placed[index]!.Value.Start)
            .ThenBy(index => drawn.Nodes[index].Operation?.Stage ?? Stages.Coat)
            .ThenBy(index => index)
            .Select(index => (Index: index, Step: Step(index, arranged, place)))
            .ToArray();
        var (reasons, slack) = looking?.GetAwaiter().GetResult() ?? ([], []);

        return
        [
            .. dated.Select(each => each.Step with
            {
                WaitsFor = WaitWords.Of(arranged, each.Index, reasons.IsEmpty ? null : reasons[each.Index], place),
                SlackMinutes = slack.IsEmpty ? 0 : slack[each.Index],
            }),
        ];
    }

    // Without what binds it.
    private static DatedStep Step(int index, Arranged arranged, Workplace place)
    {
        var (drawn, outcome) = (arranged.Drawn, arranged.Outcome);
        var node = drawn.Nodes[index];
        var placement = outcome.Placed[index]!.Value;
        var air = place.AirAround.Of(SurfacesOf(node));
        var links = PlacedLinks(index, arranged);

        var step = new DatedStep
        {
            Id = node.Id,
            Operation = node.Operation,
            Word = node.Operation?.Word ?? "coat",
            Title = Titles.Of(node),
            Surfaces = SurfacesOf(node),
            Batch = node.Batch?.Name,
            Station = node.Station,
            From = placement.Start,
            To = placement.End,
            Start = place.Clock.At(placement.Start),
            End = place.Clock.At(placement.End),
            HandsMinutes = node.Activity.Work,
            People = node.Operation?.People ?? 1,
            MakesDust = node.Operation?.MakesDust ?? false,
            Sprays = node.Coat?.Sprayed ?? false,
            Waits = Waits(links),
            Conditions = air.At(placement.Start),
            Why = node.Operation?.Why ?? Titles.WhyCoat(node.Coat!),
            WaitsFor = "",
            SlackMinutes = 0,
            Done = node.Activity.Fixed is not null,
        };
        return node.Coat is { } coat ? Coated(step, coat, links, air, placement, place) : step;
    }

    private static PlacedLink[] PlacedLinks(int index, Arranged arranged)
    {
        var (drawn, placed) = (arranged.Drawn, arranged.Outcome.Placed);
        var links = new List<PlacedLink>();
        foreach (var link in drawn.LinksTo(index))
        {
            if (placed[drawn.Leader(link)] is { } at)
                links.Add(new PlacedLink(drawn.Links[link], drawn.Nodes[drawn.Leader(link)], at, WaitWords.InUse(arranged, link)));
        }

        return [.. links];
    }

    private static DatedStep Coated(DatedStep step, CoatTask coat, PlacedLink[] links, SurfaceAir air, Placement placement, Workplace place)
    {
        var last = LastSafe.Of(coat, placement, links, place);
        return step with
        {
            Label = coat.Label,
            Layer = coat.Layer,
            Coat = coat.Coat,
            Of = coat.Of,
            Volume = coat.Volume,
            Mass = coat.Mass,
            LastSafeStart = place.Clock.At(last.Minute),
            AfterLastSafeStart = step.Done ? null : last.Then,
            TouchAt = air.Reaches(coat, FilmStage.Touch, placement.End),
            HandleAt = air.Reaches(coat, FilmStage.Handle, placement.End),
            ServiceAt = place.Clock.At(air.ReachesService(coat, placement.End)),
        };
    }

    private static ImmutableArray<string> SurfacesOf(WorkNode node) => node.Operation?.Surfaces ?? node.Coat!.Surfaces;

    // Two links between the same steps are one wait to a person: the tighter side of each.
    private static ImmutableArray<DatedWait> Waits(PlacedLink[] links)
    {
        var waits = ImmutableArray.CreateBuilder<DatedWait>(links.Length);
        foreach (var link in links)
        {
            if (link.From.IsMilestone)
                continue;

            var wait = new DatedWait(link.From.Id, link.Link.Stage, link.Link.LabelMinutes, LeastMinutes(link), MostMinutes(link));
            var at = 0;
            while (at < waits.Count && (waits[at].Step != wait.Step || waits[at].Stage != wait.Stage))
                at++;
            if (at == waits.Count)
                waits.Add(wait);
            else
                waits[at] = Tighter(waits[at], wait);
        }

        return waits.DrainToImmutable();
    }

    private static DatedWait Tighter(DatedWait one, DatedWait other) => one with
    {
        LabelMinutes = Max(one.LabelMinutes, other.LabelMinutes),
        LeastMinutes = Max(one.LeastMinutes, other.LeastMinutes),
        MostMinutes = one.MostMinutes is null || other.MostMinutes < one.MostMinutes ? other.MostMinutes ?? one.MostMinutes : one.MostMinutes,
    };

    private static double? Max(double? one, double? other) => one is null || other > one ? other ?? one : one;

    private static double? LeastMinutes(PlacedLink link) => Math.Max(0, link.Window.Least.After(link.At) - link.At.End);

    private static double? MostMinutes(PlacedLink link) => link.Window.Most is { } most ? most.After(link.At) - link.At.Start : null;
}
