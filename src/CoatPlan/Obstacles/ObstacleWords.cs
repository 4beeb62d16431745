using System.Globalization;
using CoatPlan.Climate;
using CoatPlan.Presets;
using CoatPlan.Quantities;
using CoatPlan.Timetable;
using UnitsNet;

namespace CoatPlan.Obstacles;

/// <summary>Obstacles in words, with the figures of the job: what the rule asks, what there is, and when it could be kept first.</summary>
internal sealed class ObstacleWords
{
    // The air is told of the first week: what comes later is no help to whoever wants to begin.
    private const int DaysTold = 7;
    private const int MinutesBetweenReadings = 15;

    private readonly Ask ask;
    private readonly Settled settled;
    private readonly LocalDateTime? finish;

    /// <summary>Words for the obstacles of a job.</summary>
    /// <param name="ask">What was asked.</param>
    /// <param name="settled">The best that was found.</param>
    /// <param name="finish">Its finish; null where the whole of the job could not be placed.</param>
    public ObstacleWords(Ask ask, Settled settled, LocalDateTime? finish) => (this.ask, this.settled, this.finish) = (ask, settled, finish);

    /// <summary>An obstacle in words.</summary>
    /// <param name="rules">Its rules.</param>
    /// <param name="without">When the job would be finished without them.</param>
    public string Of(ImmutableArray<ObstacleRule> rules, LocalDateTime without)
    {
        string[] clauses = [.. Clauses(rules)];
        var instead = rules is [{ Code: "finish-by" }] ? "" : $" Without {(rules.Length == 1 ? "that" : "all of that")} the job would be finished {WaitWords.Moment(without)}.";
        return clauses.Length == 1
            ? $"{Capital(clauses[0])}{Nearest(rules)}.{instead}"
            : $"Together, none of it alone: {string.Join("; ", clauses)}{Nearest(rules)}.{instead}";
    }

    // Labels that ask the same are named together, and so are air and metal.
    private IEnumerable<string> Clauses(ImmutableArray<ObstacleRule> rules)
    {
        foreach (var rule in rules.Where(rule => rule.Product is null))
            yield return OfJob(rule.Code);
        foreach (var product in rules.Where(rule => rule.Code == "window").Select(rule => ask.Labels[rule.Product!]))
            yield return Window(product);

        var limits = rules
            .Where(rule => rule.Product is not null && rule.Code != "window")
            .Select(rule => Limit(rule.Code, ask.Labels[rule.Product!]))
            .GroupBy(limit => (limit.Name, limit.Asked, limit.There))
            .Select(alike => (alike.Key.Name, What: string.Join(" and ", alike.Select(limit => limit.What)), alike.Key.Asked, alike.Key.There))
            .GroupBy(limit => (limit.What, limit.Asked, limit.There));
        foreach (var alike in limits)
        {
            string[] names = [.. alike.Select(limit => limit.Name)];
            yield return $"{string.Join(" and ", names)} {(names.Length == 1 ? "asks" : "ask")} for {alike.Key.What} {alike.Key.Asked} ({alike.Key.There})";
        }
    }

    private QuantityFormat Format => settled.Place.Format;

    private string OfJob(string code)
    {
        var (job, figures) = (ask.Job, ask.Figures);
        return code switch
        {
            "finish-by" => Late(job.FinishBy!.Value),
            "hours" => Hours(),
            "people" => Count(job.Crew.People, "person works", "people work") + " (crew, people)",
            "spray-spots" => Count(job.Place.SpraySpots, "batch can", "batches can") + " be sprayed at once (spray-spots)",
            "rack" => Count(job.Place.Rack!.Value, "piece has", "pieces have") + " room to hang or lie wet (rack)",
            "tape-limit" => $"tape may stay on for {QuantityFormat.Duration(job.TapeLimit)} (tape-limit)",
            "done" => job.AsOf is { } now ? $"what is done already is done, and nothing more can begin before {WaitWords.Moment(now)} (as-of)" : "what is done already is done",
            "night" => string.Create(CultureInfo.InvariantCulture, $"outdoors nothing may be wet from {figures.NightFrom:HH':'mm} to {figures.NightUntil:HH':'mm}"),
            "rain" => "outdoors nothing may be wet in rain, and the forecast has rain",
            "wind" => $"outdoors nothing is sprayed in wind over {Format.Speed(figures.WindLimit)}, and the forecast has more",
            "forecast-end" => $"the forecast ends {WaitWords.Moment(ask.Forecast!.Rows[^1].Time)}, and no coat is begun in weather that nobody knows (the weather of its last day going on)",
            _ => throw new ArgumentOutOfRangeException(nameof(code), code, "The code of a rule."),
        };
    }

    private string Late(LocalDateTime asked) => finish is { } found
        ? $"everything is asked for by {WaitWords.Moment(asked)} (finish-by), and the earliest finish found is {WaitWords.Moment(found)}, {Words((int)Period.Between(asked, found, PeriodUnits.Minutes).Minutes)} later"
        : $"everything is asked for by {WaitWords.Moment(asked)} (finish-by)";

    private string Hours()
    {
        var openings = settled.Place.Hours.Openings;
        if (openings.IsEmpty)
            return "the crew has no working hours in the 60 days from the start (crew, hours)";

        var longest = openings.Max(opening => opening.Closes - opening.Opens);
        var week = settled.Place.Hours.OpenMinutes(0, DaysTold * NodaConstants.MinutesPerDay);
        var coat = LongestCoat();
        var tooLong = coat > longest ? $", and one coat of what must be sprayed together takes {Words(coat)}" : "";
        return $"the crew works {Words(week)} in the first week, at most {Words(longest)} in one go (crew, hours){tooLong}";
    }

    // What the label limits, the limit, and what there is of it.
    private (string Name, string What, string Asked, string There) Limit(string code, Label label)
    {
        var limits = label.Limits;
        (string What, string Asked, Func<Conditions, double> Value, Func<double, string> Word) limit = code switch
        {
            "air-low" => ("air", $"of at least {Degrees(limits.AirLow)}", AirOf, Celsius),
            "air-high" => ("air", $"of at most {Degrees(limits.AirHigh)}", AirOf, Celsius),
            "surface-low" => ("metal", $"of at least {Degrees(limits.SurfaceLow)}", MetalOf, Celsius),
            "surface-high" => ("metal", $"of at most {Degrees(limits.SurfaceHigh)}", MetalOf, Celsius),
            "above-dew" => ("metal", $"at least {Format.TemperatureDelta(limits.AboveDew)} above the dew point until it can be touched", DewOf, Apart),
            "humidity-high" => ("humidity", $"of at most {Percent(limits.HumidityHigh)}", DampOf, Share),
            "humidity-low" => ("humidity", $"of at least {Percent(limits.HumidityLow)}", DampOf, Share),
            _ => throw new ArgumentOutOfRangeException(nameof(code), code, "The code of a rule."),
        };
        double[] readings = [.. Readings(label).Select(limit.Value)];
        if (readings.Length == 0)
            return (label.Name, limit.What, limit.Asked, "nobody works in the first week");

        var (low, high) = (Beside(readings.Min()), Beside(readings.Max()));
        return (label.Name, limit.What, limit.Asked, low == high ? $"{low} in the first week's working hours" : $"{low} to {high} in the first week's working hours");

        // Two figures that read alike would say that a limit is kept and broken at once.
        string Beside(double reading)
        {
            var word = limit.Word(reading);
            return !limit.Asked.Contains(" " + word, StringComparison.Ordinal) ? word : code.EndsWith("-high", StringComparison.Ordinal) ? "just above " + word : "just below " + word;
        }

        static double AirOf(Conditions reading) => reading.Air.DegreesCelsius;
        static double MetalOf(Conditions reading) => reading.Surface.DegreesCelsius;
        static double DewOf(Conditions reading) => Math.Max(0, reading.Surface.DegreesCelsius - reading.DewPoint.DegreesCelsius);
        static double DampOf(Conditions reading) => reading.Humidity.DecimalFractions;
        string Celsius(double celsius) => Degrees(Temperature.FromDegreesCelsius(celsius));
        string Share(double share) => Percent(Ratio.FromDecimalFractions(share));
    }

    private static string Window(Label label)
    {
        var closing = label.Recoat.Concat(label.Topcoat).Where(window => window.To is not null).Distinct()
            .Select(window => $"{QuantityFormat.Duration(window.From)} to {QuantityFormat.Duration(window.To!.Value)}");
        var missed = label.Missed == Jobs.MissedRework.Strip ? ", and a missed one asks to strip the film" : "";
        return $"the window of {label.Name} for the next coat ({string.Join(", ", closing)}) closes before it can go on{missed}";
    }

    // As the coat would be judged: the pieces that are sprayed with it, while somebody works.
    private IEnumerable<Conditions> Readings(Label label)
    {
        var air = settled.Place.AirAround.Of(Coats(label.Key).Select(coat => coat.Surfaces).FirstOrDefault([]));
        foreach (var opening in settled.Place.Hours.Openings.TakeWhile(opening => opening.Opens < DaysTold * NodaConstants.MinutesPerDay))
        {
            for (var minute = Math.Max(0, opening.Opens); minute < opening.Closes; minute += MinutesBetweenReadings)
                yield return air.At(minute);
        }
    }

    // The first stretch of the working hours in which a coat may start by every rule of its label, of the label that has to wait longest.
    private string Nearest(ImmutableArray<ObstacleRule> rules)
    {
        var nearest = rules
            .Where(rule => rule.Product is not null && rule.Code != "window")
            .Select(rule => rule.Product!)
            .Distinct()
            .Select(product => Coats(product).MaxBy(coat => coat.Hands))
            .OfType<CoatTask>()
            .Select(coat => (coat, first: FirstStarts(coat)))
            .OrderByDescending(pair => pair.first?.First ?? int.MaxValue)
            .ToArray();
        if (nearest.Length == 0)
            return "";

        var (longest, starts) = nearest[0];
        var (work, clock) = (Words((int)Math.Ceiling(longest.Hands.TotalMinutes)), settled.Place.Clock);
        return starts is { } range
            ? $"; the nearest {work} for a coat within the whole label begin {WaitWords.Moment(clock.At(range.First))}{(range.Last > range.First ? $", at the latest {WaitWords.Moment(clock.At(range.Last))}" : "")}"
            : $"; no {work} for a coat lie within the whole label in the working hours of the 60 days";
    }

    private StartRange? FirstStarts(CoatTask coat)
    {
        var (place, work) = (settled.Place, (int)Math.Ceiling(coat.Hands.TotalMinutes));
        var air = place.AirAround.Of(coat.Surfaces);
        for (var at = Math.Max(0, place.Done.Release); place.Hours.NextFit(at, work, false) is { } fit && air.FirstStarts(coat, work)(fit.Start) is { } permitted; at = permitted)
        {
            if (permitted > fit.Start)
                continue;

            var closes = place.Hours.Openings.First(opening => opening.Opens <= permitted && permitted < opening.Closes).Closes;
            return new StartRange(permitted, air.LastStart(coat, work, permitted, closes - work));
        }

        return null;
    }

    private IEnumerable<CoatTask> Coats(string product) =>
        settled.Arranged.Batches.SelectMany(batch => batch.Coats).Where(coat => coat.Label.Key == product);

    private int LongestCoat() =>
        (int)Math.Ceiling(settled.Arranged.Batches.SelectMany(batch => batch.Coats)
            .Select(coat => coat.Hands.TotalMinutes).DefaultIfEmpty(0).Max());

    private string Degrees(Temperature temperature) => Format.Temperature(temperature);

    private string Apart(double kelvin) => Format.TemperatureDelta(TemperatureDelta.FromKelvins(kelvin));

    private static string Percent(Ratio share) => QuantityFormat.Ratio(Ratio.FromPercent(Math.Round(share.Percent, 1)));

    private static string Words(int minutes) => QuantityFormat.Duration(Duration.FromMinutes(minutes));

    private static string Count(int count, string one, string more) => string.Create(CultureInfo.InvariantCulture, $"{(count == 1 ? "only " : "")}{count} {(count == 1 ? one : more)}");

    private static string Capital(string clause) => char.ToUpperInvariant(clause[0]) + clause[1..];
}
