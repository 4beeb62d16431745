using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Obstacles;
using CoatPlan.Paint;
using CoatPlan.Prep;
using CoatPlan.Timetable;

namespace CoatPlan;

/// <summary>Why a job cannot be planned as asked: planned again and again with something left out or changed, quickly each time.</summary>
internal static class JobImpasse
{
    /// <summary>What stands in the job's way and what gets it round.</summary>
    /// <param name="ready">The job.</param>
    /// <param name="sequence">What is done around its coats.</param>
    /// <param name="coats">Its coats.</param>
    /// <param name="settled">The best that was found.</param>
    /// <param name="cancel">Ends the trials when their answer is no longer wanted.</param>
    public static Impasse Of(ReadyJob ready, Sequence sequence, Coats coats, Settled settled, CancellationToken cancel)
    {
        // Most trials leave the place and its weather as they are: what is known of them need not be found again.
        var climates = new Dictionary<(Place, LocalDateTime, ClimateFigures, HourlyForecast?), PlaceClimate>();
        var ask = new Ask(ready.Job, ready.Labels, ClimateFigures.Of(ready.Trade.Catalogue), ready.Forecast);
        return Impasse.Of(ask, settled, Of(settled, sequence, coats), ready.Trade.Catalogue, changed => Plan(changed, ClimateOf(changed), ready.Trade, cancel));

        PlaceClimate ClimateOf(Ask changed)
        {
            var key = (changed.Job.Place, changed.Job.Start, changed.Figures, changed.Forecast);
            if (!climates.TryGetValue(key, out var climate))
                climates.Add(key, climate = PlaceClimate.Of(changed.Job.Place, changed.Job.Start, changed.Figures, changed.Forecast));
            return climate;
        }
    }

    /// <summary>A quick plan of an ask.</summary>
    /// <param name="ask">What is asked.</param>
    /// <param name="climate">The air it is done in.</param>
    /// <param name="trade">What the trade knows.</param>
    /// <param name="cancel">Ends the search when its answer is no longer wanted.</param>
    internal static Trial Plan(Ask ask, PlaceClimate climate, Trade trade, CancellationToken cancel = default)
    {
        var (_, sequence, coats) = PreparedJob.Of(ask.Job, ask.Labels, trade);
        var air = new AirAround(new SurfaceAirs(climate), ask.Job, trade.Catalogue);
        return Of(Timetabling.Settle(ask.Job, sequence, coats, air, trade.Catalogue, SearchDepth.Quick, null, cancel), sequence, coats);
    }

    private static Trial Of(Settled settled, Sequence sequence, Coats coats) =>
        new(settled.Finish, [.. sequence.Warnings.Concat(coats.Warnings).Select(warning => warning.Text).Distinct()]);
}
