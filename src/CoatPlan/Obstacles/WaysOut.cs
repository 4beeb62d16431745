using System.Globalization;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Quantities;
using CoatPlan.Timetable;
using UnitsNet;

namespace CoatPlan.Obstacles;

/// <summary>The nearest changes with which a job can be planned, each tried by planning it: a warmer place, another day, more hands, longer hours, another product.</summary>
/// <remarks>Of each sort the smallest step that was found to do is given; where none does by itself, two are tried together.</remarks>
internal sealed class WaysOut
{
    private const int ClassesTried = 4;
    private static readonly ImmutableArray<int> LaterDays = [1, 2, 4, 7, 14, 28, 56];
    private static readonly ImmutableArray<int> EarlierDays = [1, 2, 3, 4, 7, 14];
    private static readonly ImmutableArray<int> LongerMinutes = [60, 120, 240];
    private static readonly ImmutableArray<string> OfAir = ["air-low", "surface-low", "above-dew", "humidity-high"];

    private readonly Ask ask;
    private readonly Catalogue catalogue;
    private readonly Trials trials;
    private readonly ImmutableArray<ObstacleRule> rules;
    private readonly ImmutableArray<string> warnings;

    private WaysOut(Ask ask, Catalogue catalogue, Trials trials, ImmutableArray<ObstacleRule> rules, ImmutableArray<string> warnings)
    {
        this.ask = ask;
        this.catalogue = catalogue;
        this.trials = trials;
        this.rules = rules;
        this.warnings = warnings;
    }

    /// <summary>The ways out of a job that cannot be planned as asked.</summary>
    /// <param name="ask">What was asked.</param>
    /// <param name="found">The best that was found: its finish where the whole could be placed, and its warnings.</param>
    /// <param name="rules">The rules that stand in its way.</param>
    /// <param name="catalogue">What the trade knows.</param>
    /// <param name="trials">Plans what is tried.</param>
    public static ImmutableArray<WayOut> Of(Ask ask, Trial found, ImmutableArray<ObstacleRule> rules, Catalogue catalogue, Trials trials)
    {
        var ways = new WaysOut(ask, catalogue, trials, rules, found.Warnings);
        ImmutableArray<WayOut> single =
        [
            .. found.Finish is { } finish ? [new WayOut($"Ask for it by {WaitWords.Moment(finish)} (finish-by).", finish)] : Enumerable.Empty<WayOut>(),
            .. new[] { ways.Warmer(), ways.OneMorePerson(), ways.LongerHours(), ways.MoreSpots(), ways.MoreRack(), ways.OtherDay() }.OfType<WayOut>(),
            .. ways.OtherProducts(),
        ];
        return single.IsEmpty ? ways.Pairs() : single;
    }

    private WayOut? Try(string what, Ask changed) => trials.Of(changed)?.Finish is { } finish ? new WayOut(what, finish) : null;

    // From the least that some label asks of the air up to the most that all of them permit, in whole degrees of the job's units.
    private WayOut? Warmer()
    {
        if (ask.Job.Place.Outdoors || !rules.Any(rule => OfAir.Contains(rule.Code)))
            return null;

        var (low, high) = Degrees();
        return Least(low, high, Held);

        WayOut? Held(int degrees) => Try($"Hold {DegreesOf(degrees)} with a sealed heater.", Heated(ask, degrees));
    }

    private (int Low, int High) Degrees()
    {
        var limits = ask.Labels.All;
        var most = limits.Min(label => label.Limits.AirHigh < Labels.HottestAir ? label.Limits.AirHigh : label.AtAir);
        return ((int)Math.Ceiling(Number(limits.Min(label => label.Limits.AirLow))), (int)Math.Floor(Number(most)));
    }

    private bool IsMetric => ask.Job.Units == PrintUnits.Metric;

    private double Number(Temperature temperature) => Math.Round(IsMetric ? temperature.DegreesCelsius : temperature.DegreesFahrenheit, 6);

    private string DegreesOf(int degrees) => string.Create(CultureInfo.InvariantCulture, $"{degrees} {(IsMetric ? "°C" : "°F")}");

    private Ask Heated(Ask given, int degrees) => given with
    {
        Job = given.Job with
        {
            Place = given.Job.Place with
            {
                Hold = IsMetric ? Temperature.FromDegreesCelsius(degrees) : Temperature.FromDegreesFahrenheit(degrees),
                Heater = HeaterKind.Sealed,
            },
        },
    };

    private WayOut? OneMorePerson() => Try("Work with one person more.", MorePeople(ask));

    private static Ask MorePeople(Ask given) => given with { Job = given.Job with { Crew = given.Job.Crew with { People = given.Job.Crew.People + 1 } } };

    private WayOut? LongerHours() =>
        LongerMinutes.Select(minutes => Try($"Work {Words(minutes)} longer in each span.", Longer(ask, minutes))).FirstOrDefault(way => way is not null);

    private static Ask Longer(Ask given, int minutes) => given with
    {
        Job = given.Job with
        {
            Crew = given.Job.Crew with
            {
                Hours = [.. given.Job.Crew.Hours.Select(entry => entry with { Spans = [.. entry.Spans.Select(span => Longer(span, minutes))] })],
            },
        },
    };

    // A span that would come round to its own start stays as it is.
    private static HoursSpan Longer(HoursSpan span, int minutes)
    {
        var length = Period.Between(span.On(default).Start, span.On(default).End, PeriodUnits.Minutes).Minutes;
        return length + minutes >= NodaConstants.MinutesPerDay ? span : span with { End = span.End.PlusMinutes(minutes) };
    }

    private WayOut? MoreSpots() => !Stands("spray-spots")
        ? null
        : Try("Make room to spray one batch more at once (spray-spots).", InPlace(place => place with { SpraySpots = place.SpraySpots + 1 }));

    private WayOut? MoreRack()
    {
        if (!Stands("rack"))
            return null;

        var pieces = ask.Job.Surfaces.Sum(surface => surface.Count) * ask.Job.Crew.Stations;
        return Least((ask.Job.Place.Rack ?? 0) + 1, pieces, Room);

        WayOut? Room(int many) => Try(
            string.Create(CultureInfo.InvariantCulture, $"Make room to hang or lay {many} {(many == 1 ? "piece" : "pieces")} wet (rack)."), InPlace(place => place with { Rack = many }));
    }

    // The way with the least number that was found to do, where the highest does; halving takes few trials.
    private static WayOut? Least(int low, int high, Func<int, WayOut?> way)
    {
        if (way(high) is not { } best)
            return null;

        while (low < high)
        {
            var middle = low + ((high - low) / 2);
            if (way(middle) is { } enough)
                (high, best) = (middle, enough);
            else
                low = middle + 1;
        }

        return best;
    }

    private bool Stands(string code) => rules.Any(rule => rule.Code == code);

    private Ask InPlace(Func<Place, Place> change) => ask with { Job = ask.Job with { Place = change(ask.Job.Place) } };

    // Of a job that has begun only what is left can move; a finish that is asked for is met by beginning earlier.
    private WayOut? OtherDay()
    {
        var days = ask.Job.FinishBy is null ? LaterDays : ask.Job.Done.IsEmpty && ask.Job.AsOf is null ? [.. EarlierDays.Select(day => -day)] : [];
        return days
            .Select(day => Moved(ask.Job, day))
            .Select(job => Try($"{(job.Done.IsEmpty && job.AsOf is null ? "Start" : "Go on")} {WaitWords.Moment(job.AsOf ?? job.Start)}.", ask with { Job = job }))
            .FirstOrDefault(way => way is not null);
    }

    private static Job Moved(Job job, int days) =>
        job.Done.IsEmpty ? job with { Start = job.Start.PlusDays(days), AsOf = null } : job with { AsOf = (job.AsOf ?? job.Start).PlusDays(days) };

    // Another class of the same use whose label is wider, so long as nothing new is likely to go wrong with it.
    private IEnumerable<WayOut> OtherProducts()
    {
        foreach (var product in ask.Job.Products.Where(product => rules.Any(rule => rule.Product == product.Key)))
        {
            var label = ask.Labels[product.Key];
            var way = catalogue.Products
                .Where(other => other.Word != label.Preset && other.Role == label.Role && other.Heat >= (label.Heat ?? other.Heat))
                .Take(ClassesTried)
                .Select(other => With(product, other))
                .FirstOrDefault(found => found is not null);
            if (way is not null)
                yield return way;
        }
    }

    private WayOut? With(JobProduct product, ProductClass other)
    {
        var instead = product with { Preset = other.Word, Label = new ProductLabel { Lightness = product.Label.Lightness } };
        var job = ask.Job with { Products = ask.Job.Products.Replace(product, instead) };
        if (Labels.Resolve(job, catalogue).Labels is not { } labels || trials.Of(ask with { Job = job, Labels = labels }) is not { Finish: { } finish } trial)
            return null;

        return trial.Warnings.Except(warnings).Any() ? null : new WayOut($"Take {other.Word} for {ask.Labels[product.Key].Name} ({product.Key}).", finish);
    }

    // Two of the changes that a person can make at once.
    private ImmutableArray<WayOut> Pairs()
    {
        var minutes = LongerMinutes[^1];
        var warm = Degrees().High;
        var longer = Longer(ask, minutes);
        WayOut?[] pairs =
        [
            ask.Job.Place.Outdoors ? null : Try($"Hold {DegreesOf(warm)} with a sealed heater and work {Words(minutes)} longer in each span.", Heated(longer, warm)),
            Try($"Work with one person more and {Words(minutes)} longer in each span.", MorePeople(longer)),
            ask.Job.Place.Outdoors ? null : Try($"Hold {DegreesOf(warm)} with a sealed heater and work with one person more.", Heated(MorePeople(ask), warm)),
        ];
        return [.. pairs.OfType<WayOut>()];
    }

    private static string Words(int minutes) => QuantityFormat.Duration(Duration.FromMinutes(minutes));
}
