using CoatPlan.Cautions;
using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Timetable;

namespace CoatPlan;

/// <summary>
/// What a plan of a job rests on and what does not change while the work goes on: its surfaces, what is done around its coats, and the air around its pieces.
/// Each is worked out when it is first asked for, and kept for every plan of the job, and for the job as it is after a change that leaves it as it is.
/// </summary>
internal sealed class Groundwork
{
    private readonly Job job;
    private readonly Labels labels;
    private readonly HourlyForecast? forecast;
    private readonly Trade trade;
    private readonly Lazy<PreparedJob> prepared;
    private readonly Lazy<CautionFacts> facts;
    private readonly Lazy<SurfaceAirs> airs;
    private readonly LatestSprayWork latest;

    private Groundwork(Job job, Labels labels, HourlyForecast? forecast, Trade trade, Groundwork? before)
    {
        (this.job, this.labels, this.forecast, this.trade) = (job, labels, forecast, trade);
        if (before is not null && IsPreparedLike(before))
        {
            (prepared, facts, latest) = (before.prepared, before.facts, before.latest);
        }
        else
        {
            prepared = new Lazy<PreparedJob>(() => PreparedJob.Of(job, labels, trade));
            facts = new Lazy<CautionFacts>(() => CautionFacts.From(job, labels, Prepared.Sequence));
            latest = new LatestSprayWork();
        }

        airs = before is not null && HasAirOf(before) ? before.airs
            : new Lazy<SurfaceAirs>(() => new SurfaceAirs(PlaceClimate.Of(job.Place, job.Start, ClimateFigures.Of(trade.Catalogue), forecast)));
    }

    /// <summary>What is done around the coats of the job, and its coats.</summary>
    public PreparedJob Prepared => prepared.Value;

    /// <summary>The air around pieces in its place.</summary>
    public SurfaceAirs Airs => airs.Value;

    /// <summary>What follows from when the coats of the job are put on: that of the plan before, where they are put on at the same times.</summary>
    /// <param name="placed">When they are.</param>
    public SprayWork Sprayed(ImmutableArray<PlacedCoat> placed)
    {
        if (latest.Work is { } known && known.IsFor(placed))
            return known;

        var work = new SprayWork(job, labels, trade, Prepared, facts.Value, placed);
        latest.Work = work;
        return work;
    }

    /// <summary>The groundwork of a job.</summary>
    /// <param name="ready">The job.</param>
    /// <param name="before">The job before a change; null for none.</param>
    public static Groundwork Of(ReadyJob ready, ReadyJob? before) => new(ready.Job, ready.Labels, ready.Forecast, ready.Trade, before?.Groundwork);

    private bool IsPreparedLike(Groundwork other) =>
        ReferenceEquals(trade, other.trade) && ReferenceEquals(labels, other.labels) && Undated(job) == Undated(other.job);

    private bool HasAirOf(Groundwork other) =>
        ReferenceEquals(trade, other.trade) && ReferenceEquals(labels, other.labels) && ReferenceEquals(forecast, other.forecast)
        && job.Place == other.job.Place && job.Start == other.job.Start;

    // What was done, what time it is and by when it shall be finished are of the timetable alone.
    private static Job Undated(Job job) => job with { Done = [], AsOf = null, FinishBy = null };

    // Shared by a job and what it is after changes that move no coat.
    private sealed class LatestSprayWork
    {
        public SprayWork? Work { get; set; }
    }
}
