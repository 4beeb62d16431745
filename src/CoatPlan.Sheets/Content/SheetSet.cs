namespace CoatPlan.Sheets.Content;

/// <summary>The sheets of a plan.</summary>
public static class SheetSet
{
    /// <summary>Every sheet that the plan has something to say on, for the wall, the bench, the shop, the customer and the class.</summary>
    /// <param name="plan">The plan.</param>
    public static ImmutableArray<Sheet> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Sheet?[] sheets =
        [
            SafetySheet.Of(plan), WorkSheet.Of(plan), TimelineSheet.Of(plan), TagSheet.Of(plan), ShoppingSheet.Of(plan), QuoteSheet.Of(plan), StationSheet.Of(plan),
        ];
        return [.. sheets.OfType<Sheet>()];
    }
}
