using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>Draws batches as a network: the work on the whole job, each batch, and the order that batches keep among each other.</summary>
internal static class NetworkDrawing
{
    public static WorkNetwork Draw(ImmutableArray<Batch> allBatches, Workplace place)
    {
        var sketch = new NetworkSketch();
        var products = allBatches
            .SelectMany(batch => batch.Coats)
            .Select(coat => coat.Label.Key)
            .Distinct()
            .Select((key, index) => (key, index))
            .ToDictionary(pair => pair.key, pair => pair.index, StringComparer.Ordinal);

        var wholeJob = DrawWholeJob(sketch, place);
        var batches = allBatches
            .Select(batch => BatchDrawing.Draw(sketch, batch, label => products[label.Key], place))
            .ToImmutableArray();

        LinkEverySurface(sketch, place);
        DustBeforeFilm(sketch, batches);
        LightBeforeDark(sketch, batches, place);
        CloseUp(sketch, wholeJob, batches, place);
        return sketch.Finish(Resources(place));
    }

    private static ImmutableArray<WorkNode> DrawWholeJob(NetworkSketch sketch, Workplace place)
    {
        var drawn = ImmutableArray.CreateBuilder<WorkNode>();
        foreach (var station in place.Stations)
        {
            foreach (var operation in place.Sequence.WholeJob.Where(operation => !place.Done.IsPast(operation)))
                drawn.Add(sketch.Add(Activities.Of(operation, operation.Id, station, null, place)));
        }

        foreach (var node in drawn)
        {
            foreach (var id in node.Operation!.After)
            {
                if (sketch.Find(Batch.StationId(id, node.Station)) is { } earlier)
                    BatchDrawing.LinkOperation(sketch, earlier, node, place);
            }
        }

        return drawn.ToImmutable();
    }

    // "Every part stripped before anything dusty": one point that all of the one kind lead to and all of the other wait for.
    private static void LinkEverySurface(NetworkSketch sketch, Workplace place)
    {
        foreach (var station in place.Stations)
        {
            var here = sketch.Nodes.Where(node => node.Operation is not null && node.Station == station).ToArray();
            foreach (var word in here.SelectMany(node => node.Operation!.AfterEvery).Distinct(StringComparer.Ordinal).ToArray())
            {
                var earlier = here.Where(node => node.Operation!.Word == word).ToArray();
                if (earlier.Length == 0)
                    continue;

                var point = sketch.Add(Activities.Milestone(Batch.StationId("every/" + word, station)));
                foreach (var node in earlier)
                    BatchDrawing.LinkOperation(sketch, node, point, place);
                foreach (var node in here.Where(node => node.Operation!.AfterEvery.Contains(word) && node.Operation.Word != word))
                    sketch.After(point, node);
            }
        }
    }

    // Dusty work is done for all, at every station, before the first wipe that a coat follows.
    private static void DustBeforeFilm(NetworkSketch sketch, ImmutableArray<BatchNodes> batches)
    {
        var dusty = batches.SelectMany(batch => batch.Before).Where(node => node.Operation!.MakesDust).ToArray();
        if (dusty.Length == 0)
            return;

        var settled = sketch.Add(Activities.Milestone("every/dust"));
        foreach (var node in dusty)
            sketch.After(node, settled);
        foreach (var batch in batches)
            sketch.After(settled, batch.Before.FirstOrDefault(node => node.Operation!.Word == "final-wipe") ?? batch.Coats[0]);
    }

    // Surfaces that stay meet each other: the later colour is masked onto the earlier one, the light one first.
    private static void LightBeforeDark(NetworkSketch sketch, ImmutableArray<BatchNodes> batches, Workplace place)
    {
        foreach (var station in place.Stations)
        {
            var inPlace = batches
                .Where(nodes => nodes.Batch.Stays && nodes.Batch.Station == station)
                .OrderByDescending(nodes => nodes.Batch.Coats[^1].Label.Lightness ?? double.MaxValue)
                .ToArray();
            foreach (var (earlier, later) in inPlace.Zip(inPlace.Skip(1)))
            {
                var (film, next) = (earlier.Coats[^1], later.Before.FirstOrDefault(node => node.Operation!.Word == "mask"));
                if (next is null || film.Coat!.Label.Key == later.Batch.Coats[^1].Label.Key)
                    continue;

                var air = place.AirAround.Of(earlier.Batch.Surfaces);
                sketch.Add(new WorkLink(
                    Link.After(film.Id, next.Id, Wait.FromEnd(air.Reaching(film.Coat, FilmStage.Tape))),
                    FilmStage.Tape,
                    film.Coat.Label.Times.Tape.TotalMinutes));
            }
        }
    }

    // Reconnecting, rechecking and putting away come when nothing else of the station is left to do.
    private static void CloseUp(NetworkSketch sketch, ImmutableArray<WorkNode> wholeJob, ImmutableArray<BatchNodes> batches, Workplace place)
    {
        var closing = wholeJob.Where(node => node.Operation!.Stage >= Stages.Closing).ToArray();
        foreach (var node in sketch.Nodes.ToArray())
        {
            if (node.IsMilestone || Array.Exists(closing, last => ReferenceEquals(last, node)) || !sketch.IsLast(node))
                continue;

            foreach (var last in closing.Where(last => last.Station == node.Station))
            {
                if (node.Operation is not null)
                    BatchDrawing.LinkOperation(sketch, node, last, place);
                else
                    sketch.Add(AfterTouch(node, last, place));
            }
        }
    }

    private static WorkLink AfterTouch(WorkNode coat, WorkNode later, Workplace place)
    {
        var air = place.AirAround.Of(coat.Batch!.Surfaces);
        return new WorkLink(
            Link.After(coat.Id, later.Id, Wait.FromEnd(air.Reaching(coat.Coat!, FilmStage.Touch))),
            FilmStage.Touch,
            coat.Coat!.Label.Times.Touch.TotalMinutes);
    }

    private static ImmutableArray<Resource> Resources(Workplace place) =>
    [
        .. place.Stations.Select(station => new Resource(SharedSpace.People(station), place.Job.Crew.People)),
        new Resource(SharedSpace.SpraySpots, place.Job.Place.SpraySpots),
        .. place.Job.Place.Rack is { } rack ? [new Resource(SharedSpace.Rack, rack)] : Enumerable.Empty<Resource>(),
    ];
}
