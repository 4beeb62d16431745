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
        var names = Names(plan).ToImmutableArray();
        return [.. sheets.OfType<Sheet>().Select(sheet => sheet with { Names = names, Blocks = plan.IsWhole ? sheet.Blocks : Marked(sheet.Blocks) })];
    }

    // Whoever takes one sheet off the wall reads on it that it is not all of the job.
    private static ImmutableArray<Block> Marked(ImmutableArray<Block> blocks) =>
        blocks.Insert(blocks is [NewPage, ..] ? 1 : 0, new Notice("Not the whole job: some coats could not be placed. Hours, air and any quote leave them out."));

    // By identifier, which is in the job file; where that is no better, by place in the job file.
    private static IEnumerable<OtherName> Names(Plan plan) =>
        plan.Surfaces.Select((surface, index) => new OtherName(surface.Name, [surface.Id, $"surface {PlanWords.Count(index + 1)}"]))
            .Concat(plan.Labels.Select((label, index) => new OtherName(label.Name, [label.Product, $"product {PlanWords.Count(index + 1)}"])));
}
