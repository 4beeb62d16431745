namespace CoatPlan;

/// <summary>A chance as the JSON that scripts outside the project read; its names are a contract.</summary>
public static class ChanceJson
{
    private const int ShareDecimals = 4;
    private const int MinuteDecimals = 1;

    /// <summary>Writes a chance; the same chance gives the same text.</summary>
    /// <param name="chance">The chance.</param>
    public static string Write(Chance chance)
    {
        ArgumentNullException.ThrowIfNull(chance);
        return JsonText.Of(json =>
        {
            json.WriteNumber("draws", chance.Draws);
            JsonText.Time(json, "planned", chance.Planned);
            JsonText.Number(json, "meets", chance.Meets, ShareDecimals);
            JsonText.Time(json, "finish50", chance.Finish50);
            JsonText.Time(json, "finish90", chance.Finish90);
            JsonText.Each(json, "cans", chance.Cans, cans =>
            {
                json.WriteString("product", cans.Product);
                json.WriteNumber("cans", cans.Cans);
                JsonText.Number(json, "share", cans.Share, ShareDecimals);
            });
            JsonText.Each(json, "costly", chance.Costly, cost =>
            {
                json.WriteString("what", cost.What);
                JsonText.Number(json, "minutes", cost.Minutes, MinuteDecimals);
            });
            JsonText.Each(json, "buys", chance.Buys, buy =>
            {
                json.WriteString("what", buy.What);
                JsonText.Number(json, "meets", buy.Meets, ShareDecimals);
                JsonText.Time(json, "finish50", buy.Finish50);
            });
        });
    }
}
