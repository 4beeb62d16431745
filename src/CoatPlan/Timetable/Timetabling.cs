using CoatPlan.Jobs;
using CoatPlan.Paint;
using CoatPlan.Prep;
using CoatPlan.Presets;

namespace CoatPlan.Timetable;

/// <summary>When each operation and coat of a job is done.</summary>
internal static class Timetabling
{
    /// <summary>Dates a job that was arranged.</summary>
    /// <param name="settled">The job.</param>
    internal static DatedJob Date(Settled settled)
    {
        var (arranged, place) = (settled.Arranged, settled.Place);
        var steps = Dating.Steps(arranged, place);
        var finish = steps.IsEmpty ? (LocalDateTime?)null : steps.Max(step => step.End);
        var whole = arranged.Stopped is null;
        var coats = steps.Where(step => step.ServiceAt is not null).ToArray();
        return new DatedJob
        {
            Steps = steps,
            Finish = finish,
            InService = whole && coats.Length > 0 ? coats.Max(step => step.ServiceAt) : null,
            LowerBound = finish is { } end ? LocalDateTime.Min(place.Clock.At(settled.Bound()), end) : null,
            Reasons = Reasons(arranged, place, finish),
            Idle = IdleHours.Of(arranged, steps, place),
            RestPoints = RestPoints.Of(arranged, steps, place),
            Spans = Spans(place, finish),
        };
    }

    /// <summary>Arranges a job, before it is put into dates: what else asks after a job's network, such as a chance, takes it from here.</summary>
    /// <param name="job">The job.</param>
    /// <param name="sequence">What is done around its coats.</param>
    /// <param name="coats">Its coats.</param>
    /// <param name="air">The air it is done in.</param>
    /// <param name="catalogue">What the trade knows.</param>
    /// <param name="depth">How far to search.</param>
    /// <param name="baseline">How the job was arranged before a change, from which a quick search begins; null for none.</param>
    /// <param name="cancel">Ends a search whose answer is no longer wanted.</param>
    internal static Settled Settle(
        Job job, Sequence sequence, Coats coats, AirAround air, Catalogue catalogue, SearchDepth depth, Baseline? baseline = null, CancellationToken cancel = default)
    {
        var clock = new Clock(job.Start);
        var hours = CrewHours.Of(job.Crew, clock);
        var longest = hours.Openings.Select(opening => opening.Closes - opening.Opens).DefaultIfEmpty(0).Max();
        var done = FactsDone.Of(job, clock);
        var batching = new Batching(job, sequence, coats, catalogue, done, longest);
        var place = new Workplace
        {
            Job = job,
            Clock = clock,
            Hours = hours,
            LongestOpening = longest,
            Sequence = sequence,
            Done = done,
            AirAround = air,
            ClearingMinutes = 0,
            WipeHoldsMinutes = (int)catalogue.Figures.Time("wipe-holds").TotalMinutes,
            LeastBeforeUnmaskMinutes = (int)catalogue.Figures.Time("unmask-after").TotalMinutes,
        };
        var first = batching.Batches(place.Stations);
        place = place with { ClearingMinutes = PurgeTimes.ClearingMinutes(job, first.SelectMany(batch => batch.Coats), catalogue) };

        var heated = new OpenHeater(new Arrangement(batching, cancel), air.Climate, catalogue, depth).Arrange(first, place, baseline);
        return new Settled(heated.Arranged, heated.Place, heated.Offs) { Bound = () => depth == SearchDepth.Quick ? FinishBound.OfHands(first, place) : FinishBound.Of(first, batching, place) };
    }

    private static ImmutableArray<string> Reasons(Arranged arranged, Workplace place, LocalDateTime? finish)
    {
        if (arranged.Stopped is { } stop)
        {
            return
            [
                stop.Blockage is { } blockage
                    ? WaitWords.Of(blockage, stop.Whole, place)
                    : "No order of the steps meets windows, working hours and air within 60 days from the start.",
            ];
        }

        return finish is { } end && place.Job.FinishBy is { } asked && end > asked ? [WaitWords.Late(end, asked)] : [];
    }

    private static ImmutableArray<(LocalDateTime From, LocalDateTime To)> Spans(Workplace place, LocalDateTime? finish)
    {
        var until = (finish ?? place.Job.Start).PlusDays(1);
        return
        [
            .. CrewHours.Spans(place.Job.Crew, place.Clock)
                .Select(span => (place.Clock.At(span.From), place.Clock.At(span.To)))
                .Where(span => span.Item1 < until),
        ];
    }
}
