using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Timetable;
using UnitsNet;

namespace CoatPlan.Obstacles;

/// <summary>The rules that a job could be planned without: the finish asked for, hours, people, spots, rack, tape, what is done, windows, limits, sky.</summary>
internal static class ObstacleRules
{
    // Figures that bind no job.
    private const int Unlimited = 1000;
    private const int ForecastDays = Clock.HorizonDays + 1;
    private static readonly Speed AnyWind = Speed.FromMetersPerSecond(Unlimited);
    private static readonly TemperatureDelta AnyDew = TemperatureDelta.FromKelvins(-Unlimited);

    /// <summary>The rules that bind a job, the broad ones first, as a tree.</summary>
    public static ImmutableArray<RuleNode> Of(Ask ask)
    {
        var (job, labels) = (ask.Job, Sprayed(ask));
        return
        [
            .. new RuleNode?[]
            {
                job.FinishBy is null ? null : Rule("finish-by", given => given with { Job = given.Job with { FinishBy = null } }),
                RuleNode.Of([.. Limits(labels), .. Sky(ask)]),
                RuleNode.Of(labels.Where(Closes).Select(Windows)),
                Rule("hours", given => given with { Job = given.Job with { Crew = RoundTheClock(given.Job.Crew) } }),
                Rule("people", given => given with { Job = given.Job with { Crew = given.Job.Crew with { People = Unlimited } } }),
                Rule("spray-spots", given => InPlace(given, place => place with { SpraySpots = Unlimited })),
                job.Place.Rack is null ? null : Rule("rack", given => InPlace(given, place => place with { Rack = null })),
                job.Surfaces.All(surface => surface.Masks.IsEmpty) ? null : Rule("tape-limit", given => given with { Job = given.Job with { TapeLimit = Duration.FromDays(Unlimited) } }),
                job.Done.IsEmpty && job.AsOf is null ? null : Rule("done", given => given with { Job = given.Job with { Done = [], AsOf = null } }),
            }.OfType<RuleNode>(),
        ];
    }

    private static ImmutableArray<Label> Sprayed(Ask ask)
    {
        var systems = ask.Job.Surfaces.Select(surface => surface.System).ToHashSet(StringComparer.Ordinal);
        var used = ask.Job.Systems.Where(system => systems.Contains(system.Key)).SelectMany(system => system.Layers).Select(layer => layer.Product).ToHashSet(StringComparer.Ordinal);
        return [.. ask.Labels.All.Where(label => used.Contains(label.Key))];
    }

    private static RuleNode Rule(string code, Func<Ask, Ask> leftOut) => RuleNode.Of(new ObstacleRule(code, null, leftOut));

    // Cold before damp, and all labels before one of them: a cold place is one cause, whatever number of labels it breaks.
    private static IEnumerable<RuleNode?> Limits(ImmutableArray<Label> labels)
    {
        yield return Kind(("air-low", limits => limits with { AirLow = Labels.ColdestAir }), ("surface-low", limits => limits with { SurfaceLow = Labels.ColdestAir }));
        yield return Kind(
            ("above-dew", limits => limits with { AboveDew = AnyDew }), ("humidity-high", limits => limits with { HumidityHigh = Ratio.FromPercent(100) }));
        yield return Kind(("air-high", limits => limits with { AirHigh = Labels.HottestAir }), ("surface-high", limits => limits with { SurfaceHigh = Labels.HottestAir }));
        yield return Kind(("humidity-low", limits => limits with { HumidityLow = Ratio.Zero }));

        RuleNode? Kind(params (string Code, Func<CoatingLimits, CoatingLimits> LeftOut)[] limits) =>
            RuleNode.Of(labels.Select(label => RuleNode.Of(limits.Select(limit => RuleNode.Of(new ObstacleRule(
                limit.Code, label.Key, given => given.With(label.Key, known => known with { Limits = limit.LeftOut(known.Limits) })))))));
    }

    private static IEnumerable<RuleNode> Sky(Ask ask)
    {
        if (ask.Forecast is { Repeats: false } forecast && forecast.Rows[^1].Time < ask.Job.Start.PlusDays(Clock.HorizonDays))
            yield return Rule("forecast-end", given => given with { Forecast = GoingOn(forecast) });
        if (!ask.Job.Place.Outdoors)
            yield break;

        yield return Rule("night", given => given with { Figures = given.Figures with { NightFrom = LocalTime.Midnight, NightUntil = LocalTime.Midnight } });
        if (ask.Forecast is null)
            yield break;

        yield return Rule("rain", given => given with { Forecast = given.Forecast! with { Rows = [.. given.Forecast.Rows.Select(row => row with { Rain = Length.Zero })] } });
        yield return Rule("wind", given => given with { Figures = given.Figures with { WindLimit = AnyWind } });
    }

    private static bool Closes(Label label) => label.Recoat.Concat(label.Topcoat).Any(window => window.To is not null);

    private static RuleNode Windows(Label label) => RuleNode.Of(new ObstacleRule(
        "window", label.Key, given => given.With(label.Key, known => known with { Recoat = Open(known.Recoat), Topcoat = Open(known.Topcoat) })));

    private static ImmutableArray<CoatWindow> Open(ImmutableArray<CoatWindow> windows) => [.. windows.Select(window => window with { To = null })];

    private static Ask InPlace(Ask given, Func<Place, Place> change) => given with { Job = given.Job with { Place = change(given.Job.Place) } };

    private static Crew RoundTheClock(Crew crew) => crew with
    {
        Hours = [new HoursEntry { From = IsoDayOfWeek.Monday, To = IsoDayOfWeek.Sunday, Spans = [new HoursSpan(LocalTime.Midnight, LocalTime.Midnight)] }],
        SetUp = Duration.Zero,
        PutAway = Duration.Zero,
    };

    // The weather of the last day again and again.
    private static HourlyForecast GoingOn(HourlyForecast forecast)
    {
        var end = forecast.Rows[^1].Time;
        var last = forecast.Rows.Where(row => row.Time > end.PlusDays(-1)).ToArray();
        return forecast with
        {
            Rows = [.. forecast.Rows, .. Enumerable.Range(1, ForecastDays).SelectMany(day => last.Select(row => row with { Time = row.Time.PlusDays(day) }))],
        };
    }
}
