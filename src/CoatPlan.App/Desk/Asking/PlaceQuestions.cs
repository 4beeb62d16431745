namespace CoatPlan.App.Desk.Asking;

/// <summary>Where the work is done, and in which air.</summary>
internal static class PlaceQuestions
{
    private const string Indoors = "indoors";

    private const string Steady = "the same all the time";

    private const string Daily = "cool nights, warm days";

    private const string Hours = "a forecast in a file";

    /// <summary>The next question about the place; null where it is known.</summary>
    /// <param name="draft">What is known.</param>
    public static GuideQuestion? Next(GuideDraft draft) => draft switch
    {
        { Outdoors: null } => GuideQuestion.One("Where is it sprayed?",
            [new PickerRow(Indoors, "a garage, a shop: its size decides how vapour builds up"), new PickerRow("outdoors", "no room")],
            word => draft with { Outdoors = word != Indoors }),
        { Outdoors: false, Room: null } => GuideQuestion.Line("How large is the room? Length x width x height", draft.IsMetric ? "6.5 m x 6 m x 2.7 m" : "22 ft x 20 ft x 9 ft",
            typed => typed.Split(['x', '×'], StringSplitOptions.TrimEntries) is { Length: 3 } sizes ? draft with { Room = [.. sizes] } : null) with { Expected = "three lengths, such as 22 ft x 20 ft x 9 ft" },
        { Outdoors: false, Exhaust: null } => GuideQuestion.Line("How much air does a fan blow outdoors?", "", typed => draft with { Exhaust = typed })
            with { Explains = $"Such as {(draft.IsMetric ? "20 m3/min" : "800 ft3/min")}; nothing where there is no fan. The rating of the fan says it." },
        { Weather: null } => GuideQuestion.One("What is the air like there?",
            [
                new PickerRow(Daily, "a day's low, high and dew point, from a forecast; the metal follows the air slowly"),
                new PickerRow(Steady, "a heated room"),
                new PickerRow(Hours, "hour by hour, in a file beside the job"),
            ],
            word => draft with { Weather = word == Steady ? "steady" : word == Daily ? "daily" : "hours" }),
        { Weather: "steady", WeatherSays: null } => Figures(draft, "How warm and how damp is it? Air, humidity", draft.IsMetric ? "20 °C, 50 %" : "68 °F, 50 %", 2),
        { Weather: "daily", WeatherSays: null } => Figures(draft, "How cold, how warm, how damp? Low, high, dew point", draft.IsMetric ? "12 °C, 23 °C, 8 °C" : "54 °F, 74 °F, 46 °F", 3),
        { Weather: "hours", WeatherSays: null } => Figures(draft, "What is the file called?", "forecast.csv", 1),
        _ => null,
    };

    private static GuideQuestion Figures(GuideDraft draft, string asks, string typed, int count) => GuideQuestion.Line(asks, typed,
        said => said.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) is { } figures && figures.Length == count ? draft with { WeatherSays = [.. figures] } : null)
        with { Expected = count == 1 ? "the name of a file" : $"{count} figures with commas between, such as {typed}" };
}
