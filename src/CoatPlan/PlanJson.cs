using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using CoatPlan.Plans;
using NodaTime.Text;

namespace CoatPlan;

/// <summary>A plan as the JSON that scripts outside the project read.</summary>
/// <remarks>
/// Names and meanings are a contract: fields may be added, none renamed. Numbers are rounded well below what any of them can be known to, so that the last
/// bit of a machine's arithmetic never reaches the bytes.
/// </remarks>
public static class PlanJson
{
    /// <summary>The format number that the JSON carries.</summary>
    public const int Format = 1;

    private const int AreaDecimals = 6;
    private const int TemperatureDecimals = 2;
    private const int ShareDecimals = 4;
    private const int AmountDecimals = 3;

    private static readonly LocalDateTimePattern Time = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm:ss");

    private static readonly JsonWriterOptions Indented =
        new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes a plan; the same plan gives the same text.</summary>
    public static string Write(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);

        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Indented))
            WritePlan(json, plan);
        return JsonText.Escaped(Encoding.UTF8.GetString(bytes.ToArray())) + "\n";
    }

    private static void WritePlan(Utf8JsonWriter json, Plan plan)
    {
        json.WriteStartObject();
        json.WriteNumber("coatplan", Format);
        json.WriteString("job", plan.Job);
        WriteTime(json, "start", plan.Start);
        WriteTime(json, "finish", plan.Finish);
        WriteTime(json, "inService", plan.InService);
        WriteTime(json, "finishBy", plan.FinishBy);
        WriteTexts(json, "reasons", plan.Reasons);
        WriteTime(json, "lowerBound", plan.LowerBound);
        WriteEach(json, "surfaces", plan.Surfaces, WriteSurface);
        WriteEach(json, "steps", plan.Steps, WriteStep);
        WriteEach(json, "supplies", plan.Supplies, WriteSupply);
        WriteEach(json, "consumables", plan.Consumables, WriteConsumable);
        WriteEach(json, "layers", plan.Layers, WriteLayer);
        WriteEach(json, "weighed", plan.Weighed, WriteWeighed);
        WriteAir(json, plan.Air);
        WriteRespirator(json, plan.Respirator);
        WriteEach(json, "cautions", plan.Cautions, WriteCaution);
        WriteEach(json, "warnings", plan.Warnings, WriteWarning);
        WriteQuote(json, plan.Quote);
        WriteEach(json, "obstacles", plan.Obstacles, WriteObstacle);
        WriteEach(json, "waysOut", plan.WaysOut, WriteWayOut);
        WriteEach(json, "idle", plan.Idle, WriteIdle);
        WriteEach(json, "restPoints", plan.RestPoints, WriteRestPoint);
        json.WriteEndObject();
    }

    private static void WriteSurface(Utf8JsonWriter json, PlanSurface surface)
    {
        json.WriteString("id", surface.Id);
        json.WriteString("name", surface.Name);
        json.WriteNumber("count", surface.Count);
        WriteNumber(json, "areaM2", surface.AreaM2, AreaDecimals);
        WriteNumber(json, "relief", surface.Relief, ShareDecimals);
        json.WriteString("material", surface.Material);
        json.WriteString("finish", surface.Finish);
        WriteTexts(json, "condition", surface.Condition);
        json.WriteString("system", surface.System);
        json.WriteBoolean("stays", surface.Stays);
        WriteWhole(json, "tag", surface.Tag);
        WriteTime(json, "readyAt", surface.ReadyAt);
        WriteNumber(json, "packages", surface.Cans, AmountDecimals);
    }

    private static void WriteStep(Utf8JsonWriter json, PlanStep step)
    {
        json.WriteString("id", step.Id);
        json.WriteString("kind", step.Kind);
        json.WriteString("title", step.Title);
        WriteTexts(json, "surfaces", step.Surfaces);
        json.WriteString("batch", step.Batch);
        if (step.Station is { } station)
            json.WriteNumber("station", station);
        json.WriteString("product", step.Product);
        WriteWhole(json, "layer", step.Layer);
        WriteWhole(json, "coat", step.Coat);
        WriteWhole(json, "of", step.Of);
        json.WriteBoolean("mist", step.Mist);
        WriteTime(json, "start", step.Start);
        WriteTime(json, "end", step.End);
        WriteNumber(json, "handsMin", step.HandsMin, AmountDecimals);
        json.WriteNumber("people", step.People);
        json.WriteBoolean("makesDust", step.MakesDust);
        json.WriteBoolean("spray", step.Spray);
        WriteEach(json, "after", step.After, WriteWait);
        WriteNumber(json, "airC", step.AirC, TemperatureDecimals);
        WriteNumber(json, "surfaceC", step.SurfaceC, TemperatureDecimals);
        WriteNumber(json, "dewPointC", step.DewPointC, TemperatureDecimals);
        WriteNumber(json, "humidity", step.Humidity, ShareDecimals);
        WriteTime(json, "lastSafeStart", step.LastSafeStart);
        json.WriteString("afterLastSafeStart", step.AfterLastSafeStart);
        json.WriteString("why", step.Why);
        WriteTexts(json, "notes", step.Notes);
        json.WriteString("waitsFor", step.WaitsFor);
        json.WriteNumber("slackMin", step.SlackMin);
        WriteNumber(json, "ml", step.Ml, AmountDecimals);
        if (step.Passes is { } passes)
        {
            json.WriteStartObject("passes");
            WriteNumber(json, "fanM", passes.FanM, AmountDecimals);
            WriteNumber(json, "spacingM", passes.SpacingM, AmountDecimals);
            WriteNumber(json, "distanceM", passes.DistanceM, AmountDecimals);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("passes");
        }

        json.WriteBoolean("done", step.Done);
    }

    private static void WriteWait(Utf8JsonWriter json, PlanWait wait)
    {
        json.WriteString("step", wait.Step);
        json.WriteString("stage", Word(wait.Stage));
        WriteNumber(json, "labelMin", wait.LabelMin, AmountDecimals);
        WriteNumber(json, "leastMin", wait.LeastMin, AmountDecimals);
        WriteNumber(json, "mostMin", wait.MostMin, AmountDecimals);
    }

    private static void WriteObstacle(Utf8JsonWriter json, PlanObstacle obstacle)
    {
        WriteEach(json, "rules", obstacle.Rules, static (json, rule) =>
        {
            json.WriteString("rule", rule.Rule);
            json.WriteString("product", rule.Product);
        });
        json.WriteString("what", obstacle.What);
        WriteTime(json, "finish", obstacle.Finish);
    }

    private static void WriteWayOut(Utf8JsonWriter json, PlanWayOut way)
    {
        json.WriteString("what", way.What);
        WriteTime(json, "finish", way.Finish);
    }

    private static void WriteIdle(Utf8JsonWriter json, PlanIdle idle)
    {
        WriteTime(json, "from", idle.From);
        WriteTime(json, "to", idle.To);
        WriteWhole(json, "station", idle.Station);
        json.WriteNumber("people", idle.People);
        json.WriteString("why", idle.Why);
    }

    private static void WriteRestPoint(Utf8JsonWriter json, PlanRestPoint point)
    {
        json.WriteString("after", point.After);
        WriteTime(json, "at", point.At);
        json.WriteString("why", point.Why);
    }

    private static void WriteSupply(Utf8JsonWriter json, PlanSupply supply)
    {
        json.WriteString("product", supply.Product);
        json.WriteString("name", supply.Name);
        WriteNumber(json, "likelyMl", supply.LikelyMl, AmountDecimals);
        WriteNumber(json, "areaCoatsM2", supply.AreaCoatsM2, AreaDecimals);
        json.WriteNumber("cans", supply.Cans);
        json.WriteNumber("cansLow", supply.CansLow);
        json.WriteNumber("cansHigh", supply.CansHigh);
        json.WriteNumber("buy", supply.Buy);
        WriteMoney(json, "price", supply.Price);
        json.WriteString("basis", supply.Basis == PlanBasis.Covers ? "covers" : "solids");
        WriteEach(json, "covered", supply.Covered, static (json, covered) =>
        {
            json.WriteNumber("cans", covered.Cans);
            WriteNumber(json, "share", covered.Share, ShareDecimals);
        });
        json.WriteNumber("pack", supply.Pack);
        json.WriteNumber("packs", supply.Packs);
        json.WriteNumber("sessions", supply.Sessions);
        WriteNumber(json, "clearedCans", supply.ClearedCans, AmountDecimals);
        WriteNumber(json, "ozonePerCanG", supply.OzonePerCanG, AmountDecimals);
        WriteNumber(json, "panelM2", supply.PanelM2, AreaDecimals);
        WriteNumber(json, "panelGrams", supply.PanelGrams, AmountDecimals);
    }

    private static void WriteLayer(Utf8JsonWriter json, PlanLayer layer)
    {
        json.WriteString("surface", layer.Surface);
        json.WriteNumber("layer", layer.Layer);
        json.WriteString("product", layer.Product);
        json.WriteNumber("coats", layer.Coats);
        WriteWhole(json, "byJob", layer.ByJob);
        json.WriteNumber("labelLeast", layer.LabelLeast);
        json.WriteNumber("labelMost", layer.LabelMost);
        WriteWhole(json, "forHiding", layer.ForHiding);
        json.WriteString("primerShade", layer.PrimerShade);
        WriteWhole(json, "primerCoats", layer.PrimerCoats);
        WriteNumber(json, "dryUm", layer.DryUm, AmountDecimals);
        WriteNumber(json, "wetUm", layer.WetUm, AmountDecimals);
    }

    private static void WriteWeighed(Utf8JsonWriter json, PlanWeighed can)
    {
        json.WriteString("product", can.Product);
        WriteTexts(json, "surfaces", can.Surfaces);
        json.WriteNumber("layer", can.Layer);
        json.WriteNumber("coat", can.Coat);
        WriteNumber(json, "leftCans", can.LeftCans, AmountDecimals);
        WriteNumber(json, "nextCans", can.NextCans, AmountDecimals);
        WriteNumber(json, "restCans", can.RestCans, AmountDecimals);
        json.WriteBoolean("lasts", can.Lasts);
    }

    private static void WriteConsumable(Utf8JsonWriter json, PlanConsumable consumable)
    {
        json.WriteString("item", consumable.Item);
        WriteNumber(json, "amount", consumable.Amount, AmountDecimals);
        json.WriteString("unit", consumable.Unit);
        json.WriteString("why", consumable.Why);
        json.WriteString("word", consumable.Word);
        WriteNumber(json, "needed", consumable.Needed, AmountDecimals);
        json.WriteNumber("pack", consumable.Pack);
        json.WriteNumber("packs", consumable.Packs);
        WriteMoney(json, "price", consumable.Price);
    }

    private static void WriteAir(Utf8JsonWriter json, PlanAir air)
    {
        json.WriteStartObject("air");
        WriteNumber(json, "roomM3", air.RoomM3, AmountDecimals);
        WriteNumber(json, "exhaustM3PerMin", air.ExhaustM3PerMin, AmountDecimals);
        WriteNumber(json, "mixing", air.Mixing, AmountDecimals);
        WriteEach(json, "byStep", air.ByStep, static (json, step) =>
        {
            json.WriteString("step", step.Step);
            json.WriteStartObject("peakPpm");
            foreach (var (solvent, ppm) in step.PeakPpm)
                WriteNumber(json, solvent, ppm, AmountDecimals);
            json.WriteEndObject();
            WriteNumber(json, "mixtureRatio", step.MixtureRatio, ShareDecimals);
            WriteNumber(json, "lelRatio", step.LelRatio, AreaDecimals);
            WriteNumber(json, "purgeMin", step.PurgeMin, AmountDecimals);
        });
        WriteNumber(json, "twaMixtureRatio", air.TwaMixtureRatio, ShareDecimals);
        WriteNumber(json, "exhaustForLimitM3PerMin", air.ExhaustForLimitM3PerMin, AmountDecimals);
        WriteNumber(json, "exhaustForLelM3PerMin", air.ExhaustForLelM3PerMin, AmountDecimals);
        WriteNumber(json, "dilutionForLimitM3PerMin", air.DilutionForLimitM3PerMin, AmountDecimals);
        WriteNumber(json, "dilutionForLelM3PerMin", air.DilutionForLelM3PerMin, AmountDecimals);
        WriteEach(json, "bySolvent", air.BySolvent, WriteExposure);
        WriteEach(json, "mends", air.Mends, static (json, mend) =>
        {
            json.WriteString("code", mend.Code);
            WriteNumber(json, "exhaustM3PerMin", mend.ExhaustM3PerMin, AmountDecimals);
            WriteEach(json, "atATime", mend.AtATime, static (json, one) =>
            {
                json.WriteString("product", one.Product);
                WriteNumber(json, "cans", one.Cans, AmountDecimals);
                json.WriteNumber("goes", one.Goes);
            });
            WriteNumber(json, "betweenMin", mend.BetweenMin, AmountDecimals);
        });
        WriteTexts(json, "notes", air.Notes);
        json.WriteEndObject();
    }

    private static void WriteExposure(Utf8JsonWriter json, PlanExposure one)
    {
        json.WriteString("name", one.Name);
        WriteNumber(json, "peakPpm", one.PeakPpm, AmountDecimals);
        WriteNumber(json, "mean15MinPpm", one.Mean15MinPpm, AmountDecimals);
        WriteNumber(json, "mean8HPpm", one.Mean8HPpm, AmountDecimals);
        WriteNumber(json, "limitPpm", one.LimitPpm, AmountDecimals);
        WriteNumber(json, "shortTermPpm", one.ShortTermPpm, AmountDecimals);
        WriteNumber(json, "ceilingPpm", one.CeilingPpm, AmountDecimals);
        WriteNumber(json, "idlhPpm", one.IdlhPpm, AmountDecimals);
        WriteNumber(json, "maximumUsePpm", one.MaximumUsePpm, AmountDecimals);
    }

    private static void WriteRespirator(Utf8JsonWriter json, PlanRespirator respirator)
    {
        json.WriteStartObject("respirator");
        json.WriteString("kind", respirator.Kind);
        WriteTexts(json, "why", respirator.Why);
        WriteWhole(json, "factor", respirator.Factor);
        WriteNumber(json, "cartridgeH", respirator.CartridgeH, AmountDecimals);
        json.WriteEndObject();
    }

    private static void WriteCaution(Utf8JsonWriter json, PlanCaution caution)
    {
        json.WriteString("code", caution.Code);
        json.WriteString("text", caution.Text);
        json.WriteString("source", caution.Source);
    }

    private static void WriteWarning(Utf8JsonWriter json, PlanWarning warning)
    {
        json.WriteString("code", warning.Code);
        json.WriteString("surface", warning.Surface);
        json.WriteString("product", warning.Product);
        json.WriteString("text", warning.Text);
    }

    private static void WriteQuote(Utf8JsonWriter json, PlanQuote? quote)
    {
        if (quote is null)
        {
            json.WriteNull("quote");
            return;
        }

        json.WriteStartObject("quote");
        json.WriteString("currency", quote.Currency);
        WriteNumber(json, "labourH", quote.LabourH, AmountDecimals);
        WriteMoney(json, "perHour", quote.PerHour);
        WriteEach(json, "hours", quote.Hours, static (json, one) =>
        {
            json.WriteString("operation", one.Operation);
            WriteNumber(json, "h", one.H, AmountDecimals);
        });
        WriteMoney(json, "labour", quote.Labour);
        WriteMoney(json, "paint", quote.Paint);
        WriteMoney(json, "consumables", quote.Consumables);
        WriteMoney(json, "materials", quote.Materials);
        WriteMoney(json, "markup", quote.Markup);
        WriteMoney(json, "tax", quote.Tax);
        WriteMoney(json, "total", quote.Total);
        WriteMoney(json, "low", quote.Low);
        WriteMoney(json, "high", quote.High);
        WriteEach(json, "lines", quote.Lines, static (json, line) =>
        {
            json.WriteString("surface", line.Surface);
            WriteMoney(json, "labour", line.Labour);
            WriteMoney(json, "materials", line.Materials);
            WriteMoney(json, "markup", line.Markup);
            WriteMoney(json, "tax", line.Tax);
            WriteMoney(json, "total", line.Total);
        });
        WriteTexts(json, "notIncluded", quote.NotIncluded);
        json.WriteEndObject();
    }

    private static string Word(PlanStage stage) => stage switch
    {
        PlanStage.Done => "done",
        PlanStage.Dust => "dust",
        PlanStage.Touch => "touch",
        PlanStage.Tape => "tape",
        PlanStage.Recoat => "recoat",
        PlanStage.Handle => "handle",
        PlanStage.Through => "through",
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "A stage of the contract."),
    };

    private static void WriteEach<T>(Utf8JsonWriter json, string name, ImmutableArray<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(json, item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteTexts(Utf8JsonWriter json, string name, ImmutableArray<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }

    private static void WriteTime(Utf8JsonWriter json, string name, LocalDateTime? time)
    {
        if (time is { } known)
            json.WriteString(name, Time.Format(known));
        else
            json.WriteNull(name);
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, double? number, int decimals)
    {
        if (number is { } known && double.IsFinite(known))
            json.WriteNumber(name, Math.Round(known, decimals, MidpointRounding.AwayFromZero) + 0.0);
        else
            json.WriteNull(name);
    }

    private static void WriteWhole(Utf8JsonWriter json, string name, int? number)
    {
        if (number is { } known)
            json.WriteNumber(name, known);
        else
            json.WriteNull(name);
    }

    private static void WriteMoney(Utf8JsonWriter json, string name, decimal? money)
    {
        if (money is { } known)
            json.WriteNumber(name, known);
        else
            json.WriteNull(name);
    }
}
