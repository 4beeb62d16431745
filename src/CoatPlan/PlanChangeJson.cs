namespace CoatPlan;

/// <summary>What a step that was done moved, as JSON for scripts.</summary>
public static class PlanChangeJson
{
    /// <summary>Writes a change; the same change gives the same text.</summary>
    /// <param name="change">The change.</param>
    public static string Write(PlanChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return JsonText.Of(json =>
        {
            json.WriteString("step", change.Step);
            json.WriteString("title", change.Title);
            JsonText.Number(json, "stations", change.Stations, 0);
            JsonText.Time(json, "finishBefore", change.FinishBefore);
            JsonText.Time(json, "finishAfter", change.FinishAfter);
            JsonText.Number(json, "finishMovesMin", change.FinishMovesMin, 0);
            json.WriteBoolean("meets", change.Meets);
            JsonText.Texts(json, "added", change.Added);
            JsonText.Texts(json, "dropped", change.Dropped);
        });
    }
}
