namespace CoatPlan.Sheets.Content;

/// <summary>The last line of every sheet: what wins over it.</summary>
internal static class Deferral
{
    /// <summary>The plan's last caution, which is the deferral; nothing where the plan has none.</summary>
    public static IEnumerable<Block> Of(Plan plan)
    {
        if (plan.Cautions.LastOrDefault() is { } deferral)
            yield return new Closing(deferral.Text);
    }
}
