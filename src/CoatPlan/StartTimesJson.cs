namespace CoatPlan;

/// <summary>Starts worth having as the JSON that scripts outside the project read; its names are a contract.</summary>
public static class StartTimesJson
{
    private const int Decimals = 2;

    /// <summary>Writes starts; the same starts give the same text.</summary>
    /// <param name="starts">The starts, best first.</param>
    public static string Write(ImmutableArray<StartTime> starts) => JsonText.Of(json => JsonText.Each(json, "starts", starts, start =>
    {
        JsonText.Time(json, "start", start.Start);
        JsonText.Time(json, "finish", start.Finish);
        json.WriteBoolean("meets", start.Meets);
        JsonText.Number(json, "leastMarginC", start.LeastMarginC, Decimals);
        JsonText.Number(json, "waitH", start.WaitH, Decimals);
    }));
}
