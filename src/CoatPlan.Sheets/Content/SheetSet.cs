namespace CoatPlan.Sheets.Content;

/// <summary>The sheets of a plan.</summary>
public static class SheetSet
{
    /// <summary>Every sheet that the plan has something to say on, for the wall, the bench and the shop.</summary>
    /// <param name="plan">The plan.</param>
    public static ImmutableArray<Sheet> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [SafetySheet.Of(plan), WorkSheet.Of(plan), TimelineSheet.Of(plan), ShoppingSheet.Of(plan)];
    }
}
