using System.Text.Json;
using System.Text.Json.Nodes;

namespace CoatPlan.Tests.Validator;

/// <summary>A valid plan of two pieces on one Saturday, made by hand, and small edits of it.</summary>
internal sealed class HandMadeWeekend
{
    private const string Saturday = "2027-05-15T";

    public JsonObject Plan { get; } = JsonNode.Parse(ReadText("weekend.plan.json"))!.AsObject();

    public string Job { get; private set; } = ReadText("weekend.job.yaml");

    public ImmutableArray<Violation> Check(string? hours = null)
    {
        using var document = JsonDocument.Parse(Plan.ToJsonString());
        return PlanValidator.Check(document.RootElement, Job, hours);
    }

    public JsonObject Step(string id) => Plan["steps"]!.AsArray().Single(step => step!["id"]!.GetValue<string>() == id)!.AsObject();

    public JsonObject Supply(string product) => Plan["supplies"]!.AsArray().Single(row => row!["product"]!.GetValue<string>() == product)!.AsObject();

    /// <summary>Moves a step to other times of the Saturday, or of the day written before them.</summary>
    public HandMadeWeekend Move(string id, string start, string end)
    {
        Step(id)["start"] = Time(start);
        Step(id)["end"] = Time(end);
        Plan["finish"] = Plan["steps"]!.AsArray().Select(step => step!["end"]!.GetValue<string>()).Max(StringComparer.Ordinal);
        return this;
    }

    /// <summary>Takes a step out, with every wait for it.</summary>
    public HandMadeWeekend Remove(string id)
    {
        Plan["steps"]!.AsArray().Remove(Step(id));
        foreach (var step in Plan["steps"]!.AsArray())
        {
            var waits = step!["after"]!.AsArray();
            foreach (var wait in waits.Where(wait => wait!["step"]!.GetValue<string>() == id).ToArray())
            {
                waits.Remove(wait);
            }
        }

        var air = Plan["air"]!["byStep"]!.AsArray();
        foreach (var row in air.Where(row => row!["step"]!.GetValue<string>() == id).ToArray())
        {
            air.Remove(row);
        }

        return this;
    }

    /// <summary>The step says of itself that it waits for nothing, as a planner would that does not know the rule.</summary>
    public HandMadeWeekend Forget(string id)
    {
        Step(id)["after"] = new JsonArray();
        return this;
    }

    public HandMadeWeekend Set(string id, string key, JsonNode? value)
    {
        Step(id)[key] = value;
        return this;
    }

    public HandMadeWeekend SetWait(string id, string key, JsonNode? value)
    {
        Step(id)["after"]![0]![key] = value;
        return this;
    }

    public HandMadeWeekend SetPlan(string key, JsonNode? value)
    {
        Plan[key] = value;
        return this;
    }

    public HandMadeWeekend SetSupply(string product, string key, JsonNode? value)
    {
        Supply(product)[key] = value;
        return this;
    }

    public HandMadeWeekend SetEverywhere(string key, JsonNode value)
    {
        foreach (var step in Plan["steps"]!.AsArray())
        {
            step![key] = value.DeepClone();
        }

        return this;
    }

    /// <summary>The same plan for a job that says something else in one place.</summary>
    public HandMadeWeekend ForJob(string old, string @new)
    {
        Job.ShouldContain(old, customMessage: "the edit of the job must meet its text");
        Job = Job.Replace(old, @new, StringComparison.Ordinal);
        return this;
    }

    /// <summary>All of the plan three hours earlier.</summary>
    public HandMadeWeekend EarlierByThreeHours()
    {
        foreach (var item in Plan["steps"]!.AsArray().Append(Plan))
        {
            foreach (string key in (string[])["start", "end", "lastSafeStart", "finish", "inService", "lowerBound"])
            {
                if (item != Plan || key != "start")
                {
                    Shift(item!.AsObject(), key, -180);
                }
            }
        }

        return this;
    }

    /// <summary>The steps up to the final wipe two hours earlier, the others as they were.</summary>
    public HandMadeWeekend EarlierByTwoHoursUntilTheWipe()
    {
        foreach (var item in Plan["steps"]!.AsArray().TakeWhile(item => item!["id"]!.GetValue<string>() != "tack"))
        {
            Shift(item!.AsObject(), "start", -120);
            Shift(item.AsObject(), "end", -120);
        }

        return this;
    }

    /// <summary>
    /// The same steps in a day from 60 to 70 °F with a dew point of 46 °F, the air worked out here by the hour: 70 - 10 x f, f of ASHRAE 2021 for 8 to 15 o'clock 0.74 0.55 0.38 0.23 0.13 0.05 0.00 0.00.
    /// </summary>
    public HandMadeWeekend InADailyGarage()
    {
        ForJob("steady: {air: 70 °F, humidity: 50 %}", "daily: {low: 60 °F, high: 70 °F, dew-point: 46 °F}");
        double[] fahrenheit = [62.6, 64.5, 66.2, 67.7, 68.7, 69.5, 70.0, 70.0];
        foreach (var step in Plan["steps"]!.AsArray())
        {
            double start = WallMinutes.Read(step!["start"]!.GetValue<string>()) % WallMinutes.Day / 60 - 8;
            int hour = (int)start;
            double air = (fahrenheit[hour] + (start - hour) * (fahrenheit[hour + 1] - fahrenheit[hour]) - 32) / 1.8;
            step["airC"] = Math.Round(air, 2);
            step["surfaceC"] = Math.Round(air - 0.3, 2);
            step["dewPointC"] = 7.78;
            step["humidity"] = Math.Round(Psychrometry.SaturationHpa(7.78) / Psychrometry.SaturationHpa(air), 3);
        }

        return this;
    }

    private static void Shift(JsonObject item, string key, double minutes)
    {
        if (item[key] is { } time)
        {
            item[key] = WallMinutes.Write(WallMinutes.Read(time.GetValue<string>()) + minutes);
        }
    }

    private static string Time(string text) => text.Length > 5 ? text : Saturday + text + ":00";

    private static string ReadText(string file) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", "validator", file));
}
