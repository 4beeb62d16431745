using CoatPlan.Jobs;
using CoatPlan.Paint;
using CoatPlan.Plans;
using CoatPlan.Timetable;

namespace CoatPlan.Explanations;

/// <summary>What can be asked of a step: its times, its waits, its work, its air.</summary>
internal static class StepTopics
{
    private const string Timetable = "the timetable";

    public static IEnumerable<Topic> Of(Workings workings, Told told)
    {
        for (var i = 0; i < workings.Steps.Length; i++)
        {
            foreach (var topic in Of(workings, told, workings.Steps[i], workings.Dated.Steps[i], i))
                yield return topic;
        }
    }

    /// <summary>The hands-on time of a step.</summary>
    public static Explanation Hands(Workings workings, Told told, PlanStep step)
    {
        if (workings.Dated.Steps.FirstOrDefault(known => known.Id == step.Id) is { Label: not null } coat)
            return SprayHands(workings, told, step, coat);

        var operation = workings.Catalogue.Operations.FirstOrDefault(row => row.Word == step.Kind);
        var work = workings.Dated.Steps.First(known => known.Id == step.Id).Operation?.Work ?? [];
        return Told.Sum(
            "hands-on time, breaks left out", Told.Minutes(step.HandsMin), step.HandsMin,
            "(fixed part + minutes per m² × area × form + per edge and plug) × reach × (1 + rest), for each piece, never under the least of an operation; rounded up to whole minutes",
            operation is null ? "presets, operations" : $"presets, operations: {step.Kind}; {Told.From(operation.Provenance)}",
            [
                .. work.Select(part => (Explanation?)Told.Given(NameOf(workings, part.Surface), Told.Minutes(part.Hands.TotalMinutes), "its area, condition and form", part.Hands.TotalMinutes)),
                told.Figure("rest"), told.Figure("least-minutes"),
            ]);
    }

    private static Explanation SprayHands(Workings workings, Told told, PlanStep step, DatedStep coat)
    {
        var parts = workings.Coats.Of(coat.Surfaces, coat.Layer!.Value, coat.Coat!.Value);
        var method = coat.Label!.Method;
        return Told.Sum(
            "hands-on time, breaks left out", Told.Minutes(step.HandsMin), step.HandsMin,
            "the longer of minutes per m² × area × form × reach, and grams ÷ flow ÷ share of the time the button is down; the fixed part of each piece, rest, opening and clearing each can on top",
            Told.From(SprayTime.Rate(method, step.Mist, workings.Catalogue).Provenance),
            [
                .. parts.Select(part => (Explanation?)Told.Given(NameOf(workings, part.Surface), Told.Minutes(part.Hands.TotalMinutes), "its area, form and reach, and what it takes of the can", part.Hands.TotalMinutes)),
                method.Flow is { } flow ? Told.Given("flow with the button held", $"{Told.Plain(flow.GramsPerSecond)} g/s", Told.From(method.Provenance), flow.GramsPerSecond) : null,
                method.Flow is null ? null : Told.Given("share of the time the button is down", Told.Percent(method.ButtonShare), Told.From(method.Provenance), method.ButtonShare),
                told.Figure("rest"),
            ]);
    }

    private static IEnumerable<Topic> Of(Workings workings, Told told, PlanStep step, DatedStep dated, int at)
    {
        Topic Say(string field, Func<Explanation> explain, params ImmutableArray<string> also) => new(
            $"steps[{at}].{field}", [$"step {at + 1} {field}", $"step {step.Id} {field}", $"steps[{step.Id}].{field}", .. also], explain);

        yield return new Topic($"steps[{at}]", [$"step {at + 1}", $"step {step.Id}", step.Id], () => Start(workings, told, step) with { Inputs = [Start(workings, told, step), End(workings, told, step), .. step.After.Select(wait => Wait(workings, told, step, wait, dated))] });
        yield return Say("start", () => Start(workings, told, step));
        yield return Say("end", () => End(workings, told, step));
        yield return Say("handsMin", () => Hands(workings, told, step), $"hands {at + 1}");
        yield return Say("people", () => Told.Given("people busy all that time", Told.Plain(step.People), "presets, operations; the crew of the job file", step.People));
        if (step.Station is { } station)
            yield return Say("station", () => Told.Given("station", Told.Plain(station), Told.JobFile, station));
        yield return Say("airC", () => Air(workings, told, "air at its start", told.Degrees(step.AirC), step.AirC));
        yield return Say("surfaceC", () => Told.Sum(
            "the coldest of its pieces at its start", told.Degrees(step.SurfaceC), step.SurfaceC, "the metal follows the air with τ = ρ·c·gauge ÷ (faces × film coefficient)", "lumped heat balance (computed); film coefficients ISO 6946 (published, read second-hand)",
            [Air(workings, told, "air at its start", told.Degrees(step.AirC), step.AirC), .. step.Surfaces.Select(id => (Explanation?)Metal(workings, told, id))]));
        yield return Say("dewPointC", () => Air(workings, told, "dew point at its start", told.Degrees(step.DewPointC), step.DewPointC));
        yield return Say("humidity", () => Told.Sum(
            "relative humidity at its start", Told.Percent(step.Humidity), step.Humidity, "vapour pressure at the dew point ÷ saturation pressure at the air's temperature", "ASHRAE Fundamentals 2017 ch. 1 (published)",
            Air(workings, told, "air at its start", told.Degrees(step.AirC), step.AirC), Air(workings, told, "dew point at its start", told.Degrees(step.DewPointC), step.DewPointC)));
        yield return Say("slackMin", () => Told.Sum(
            "how much later it could start without moving the finish", Told.Minutes(step.SlackMin), step.SlackMin, "latest start that leaves the finish where it is − its start", Timetable));
        if (step.Layer is { } layer)
            yield return Say("layer", () => Told.Given("layer of the system", Told.Plain(layer), Told.JobFile, layer));
        if (step.Coat is { } coat)
            yield return Say("coat", () => Told.Given("coat in the layer; 0 is the mist coat", Told.Plain(coat), "the layer's coats, see coats", coat));
        if (step.Of is { } of)
            yield return Say("of", () => Told.Given("full coats in the layer", Told.Plain(of), "see coats of the layer", of));
        if (step.LastSafeStart is { } last)
        {
            yield return Say("lastSafeStart", () => Told.Sum(
                "latest start that still meets windows, light and dew", Told.Time(last), null, "the earliest of: the window of the coat before closes, the metal comes within its margin of the dew point, the air leaves the label's limits, outdoors the light goes",
                "the label's limits and windows, in the plan's own conditions", [.. Limits(told, step)]));
        }

        if (step.Ml is { } ml)
        {
            yield return Say("ml", () => Told.Sum(
                "contents to spray", told.Paint(ml), ml, "Σ packages × net volume", "see each coat",
                [.. workings.Coats.Of(dated.Surfaces, dated.Layer!.Value, dated.Coat!.Value).Select(part => (Explanation?)SupplyTopics.Coat(part, told))]), $"spray {at + 1}");
        }

        if (step.Passes is { } passes)
        {
            var method = dated.Label!.Method;
            yield return Say("passes.fanM", () => Fan(told, method, passes));
            yield return Say("passes.spacingM", () => Told.Sum("from the middle of one pass to the next", told.Format.Length(UnitsNet.Length.FromMeters(passes.SpacingM)), passes.SpacingM, "width of a pass × (1 − overlap)", "MIL-HDBK-1110 §9.6.8 (published)", Fan(told, method, passes), told.Figure("overlap")));
            yield return Say("passes.distanceM", () => Told.Given("nozzle to surface", told.Format.Length(UnitsNet.Length.FromMeters(passes.DistanceM)), Told.From(method.Provenance), passes.DistanceM));
        }

        for (var i = 0; i < step.After.Length; i++)
        {
            var wait = step.After[i];
            var place = i;
            ImmutableArray<string> First(string field) => place == FirstWith(step, field) ? [$"step {at + 1} {field}", $"step {step.Id} {field}"] : [];
            if (wait.LabelMin is { } label)
            {
                yield return Say($"after[{place}].labelMin", () => Told.Given(
                    $"the label's {StageOf(wait.Stage)} after “{TitleOf(workings, wait.Step)}”", Told.Minutes(label), "the label, at its own conditions", label), First("labelMin"));
            }

            if (wait.LeastMin is not null)
                yield return Say($"after[{place}].leastMin", () => Wait(workings, told, step, wait, dated), First("leastMin"));
            if (wait.MostMin is { } most)
            {
                yield return Say($"after[{place}].mostMin", () => Told.Sum(
                    $"what the window leaves from the start of “{TitleOf(workings, wait.Step)}”", Told.Minutes(most), most, "close of the window in use − start of the earlier coat, rounded down: its first piece was wet first",
                    "the label's window, brought to the plan's conditions; tape: the job's tape-limit"), First("mostMin"));
            }
        }
    }

    private static Explanation Fan(Told told, Presets.CoatingMethod method, PlanPasses passes) =>
        Told.Given("width of one pass", told.Format.Length(UnitsNet.Length.FromMeters(passes.FanM)), Told.From(method.Provenance), passes.FanM);

    private static int FirstWith(PlanStep step, string field)
    {
        for (var i = 0; i < step.After.Length; i++)
        {
            var has = field switch { "labelMin" => step.After[i].LabelMin, "leastMin" => step.After[i].LeastMin, _ => step.After[i].MostMin };
            if (has is not null)
                return i;
        }

        return -1;
    }

    private static Explanation Start(Workings workings, Told told, PlanStep step) => Told.Sum(
        $"start of “{step.Title}”", Told.Time(step.Start), null, step.WaitsFor.Length > 0 ? step.WaitsFor : "as soon as it can", Timetable,
        [.. step.After.Select(wait => (Explanation?)Wait(workings, told, step, wait, workings.Dated.Steps.First(known => known.Id == step.Id)))]);

    private static Explanation End(Workings workings, Told told, PlanStep step) => Told.Sum(
        $"end of “{step.Title}”", Told.Time(step.End), null, "start + hands-on time + breaks between working spans", Timetable,
        Told.Given("start", Told.Time(step.Start), Timetable), Hands(workings, told, step));

    private static Explanation Wait(Workings workings, Told told, PlanStep step, PlanWait wait, DatedStep dated)
    {
        var earlier = workings.Steps.FirstOrDefault(known => known.Id == wait.Step);
        var label = workings.Dated.Steps.FirstOrDefault(known => known.Id == wait.Step)?.Label ?? dated.Label;
        var drying = wait.LabelMin is not null && label is not null && wait.Stage != PlanStage.Done;
        return Told.Sum(
            $"least wait from the end of “{earlier?.Title ?? wait.Step}” to the start of “{step.Title}”", wait.LeastMin is { } least ? Told.Minutes(least) : "none", wait.LeastMin,
            drying
                ? "minutes until the sum of rates reaches the label's time, rounded up; each minute counts Q10^((metal − label's temperature) ÷ 10 K), by its kind of drying with humidity; a label's own table of times wins"
                : "a fixed wait of the work itself, brought to the plan's conditions where it dries, rounded up",
            drying ? "cure rate doubles for 10 °C, trade training note (common practice)" : "presets, figures and operations",
            wait.LabelMin is { } said ? Told.Given("the label's time", Told.Minutes(said), drying ? $"label of {label!.Name}: {told.Said(label, "times")}" : "presets", said) : null,
            drying ? Told.Given("factor for 10 K (Q10)", Told.Plain(label!.Q10, 2), "presets (common practice)", label.Q10) : null,
            drying ? Told.Given("the label's own air", told.Format.Temperature(label!.AtAir), told.Said(label, "at"), label.AtAir.DegreesCelsius) : null,
            earlier is null ? null : Told.Given("metal when the earlier coat began", told.Degrees(earlier.SurfaceC), "the weather of the job file; the metal follows the air", earlier.SurfaceC));
    }

    private static Explanation Metal(Workings workings, Told told, string id)
    {
        var measured = workings.Measured.First(known => known.Id == id);
        return Told.Given($"gauge of {measured.Surface.Name}", told.Format.Length(measured.Gauge), measured.Surface.Gauge is null ? $"presets, {measured.Surface.Material}" : Told.JobFile, measured.Gauge.Meters);
    }

    private static Explanation Air(Workings workings, Told told, string what, string value, double number) => workings.Job.Place.Weather switch
    {
        SteadyWeather steady => Told.Sum(what, value, number, "the same all the time, and what a heater holds on top", Told.JobFile, Told.Given("air", told.Format.Temperature(steady.Air), Told.JobFile), Told.Given("humidity", Told.Percent(steady.Humidity.DecimalFractions), Told.JobFile)),
        DailyWeather daily => Told.Sum(
            what, value, number, "high − fraction of the daily range by clock hour × (high − low); vapour content constant, capped at saturation; what a heater holds on top",
            "ASHRAE Fundamentals 2021 ch. 14 Table 6 (published, read second-hand)",
            Told.Given("low", told.Format.Temperature(daily.Low), Told.JobFile), Told.Given("high", told.Format.Temperature(daily.High), Told.JobFile),
            daily.DewPoint is { } dew ? Told.Given("dew point", told.Format.Temperature(dew), Told.JobFile) : Told.Given("humidity at the day's mean air", Told.Percent(daily.Humidity?.DecimalFractions ?? 0), Told.JobFile)),
        HourlyWeather hourly => Told.Sum(what, value, number, "straight between the rows of the forecast, and what a heater holds on top", $"forecast {hourly.Path}"),
        _ => Told.Given(what, value, Told.JobFile, number),
    };

    private static IEnumerable<Explanation?> Limits(Told told, PlanStep step)
    {
        if (step.Limits is not { } limits)
            yield break;
        yield return Told.Given("air", $"{told.Degrees(limits.AirLowC)} to {told.Degrees(limits.AirHighC)}", "limits of the label");
        yield return Told.Given("metal", $"{told.Degrees(limits.SurfaceLowC)} to {told.Degrees(limits.SurfaceHighC)}", "limits of the label");
        yield return Told.Given("humidity at most", Told.Percent(limits.HumidityHigh), "limits of the label", limits.HumidityHigh);
        yield return Told.Given("metal above the dew point at least", $"{Told.Plain(limits.AboveDewC, 1)} K", "limits of the label, or ISO 8502-4 (published, read second-hand)", limits.AboveDewC);
    }

    private static string TitleOf(Workings workings, string id) => workings.Steps.FirstOrDefault(known => known.Id == id)?.Title ?? id;

    private static string NameOf(Workings workings, string id) => workings.Surfaces.FirstOrDefault(known => known.Id == id)?.Name ?? id;

    private static string StageOf(PlanStage stage) => stage switch
    {
        PlanStage.Done => "wait",
        PlanStage.Dust => "time to dust-free",
        PlanStage.Touch => "time to touch",
        PlanStage.Tape => "time to tape",
        PlanStage.Recoat => "time to recoat",
        PlanStage.Handle => "time to handle",
        PlanStage.Through => "time to dry through",
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "A stage of the contract."),
    };
}
