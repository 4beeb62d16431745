using CoatPlan.App.Desk;
using CoatPlan.App.Wording;
using CoatPlan.Jobs;
using CoatPlan.Plans;

namespace CoatPlan.App.Screens;

/// <summary>What to have: cans with how likely each number is to be enough, and the rest with how it was counted.</summary>
internal static class SuppliesScreen
{
    private const int GaugeWidth = 20;

    private const int DetailRows = 6;

    private const int MostWidth = 120;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="desk">The desk.</param>
    public static void Draw(Canvas canvas, JobDesk desk)
    {
        if (desk.Plan is not { } plan)
            return;

        // A name and its figures belong together, however wide the terminal is.
        var table = new Canvas(Math.Min(canvas.Width, MostWidth), canvas.Height);
        Table(table, desk, plan);
        canvas.Paste(0, 0, table);
    }

    private static void Table(Canvas canvas, JobDesk desk, Plan plan)
    {
        var rows = plan.Supplies.Length + plan.Consumables.Length;
        var shown = Math.Max(1, canvas.Height - DetailRows - 2);
        var first = Scroll.First(desk.SupplyAt, rows, shown);
        canvas.Field(0, 0, canvas.Width, "  To have", Ink.Strong);
        canvas.FieldRight(canvas.Width - 39, 0, 12, "Needed", Ink.Strong);
        canvas.FieldRight(canvas.Width - 26, 0, 8, "To buy", Ink.Strong);
        canvas.FieldRight(canvas.Width - 17, 0, 16, "Price", Ink.Strong);
        for (var y = 0; y < shown && first + y < rows; y++)
            Row(canvas, y + 1, desk, plan, first + y);

        var detail = new Canvas(canvas.Width, Math.Max(0, canvas.Height - Math.Min(shown, rows) - 2));
        Detail(new Reader(detail, 0), desk, plan);
        canvas.Paste(0, Math.Min(shown, rows) + 2, detail);
    }

    /// <summary>The row of what to have at a row of the place; null where there is none.</summary>
    /// <param name="height">Rows of the place.</param>
    /// <param name="y">The row.</param>
    /// <param name="desk">The desk.</param>
    public static int? At(int height, int y, JobDesk desk)
    {
        var rows = (desk.Plan?.Supplies.Length + desk.Plan?.Consumables.Length) ?? 0;
        var shown = Math.Max(1, height - DetailRows - 2);
        var at = Scroll.First(desk.SupplyAt, rows, shown) + y - 1;
        return y >= 1 && y <= shown && at < rows ? at : null;
    }

    private static void Row(Canvas canvas, int y, JobDesk desk, Plan plan, int at)
    {
        var chosen = at == desk.SupplyAt;
        var ink = chosen ? Ink.Chosen : Ink.Plain;
        canvas.Field(0, y, canvas.Width, "", ink);
        canvas.Write(0, y, chosen ? ">" : " ", ink);
        var nameWidth = canvas.Width - 42;
        if (at < plan.Supplies.Length)
        {
            var supply = plan.Supplies[at];
            canvas.Field(2, y, nameWidth, supply.Name, ink);
            canvas.FieldRight(canvas.Width - 39, y, 12, Written.Count(supply.Cans, "can", "cans"), ink);
            canvas.FieldRight(canvas.Width - 26, y, 8, supply is { Pack: > 1, Packs: > 0 } ? $"{supply.Packs} x {supply.Pack}" : Written.Number(supply.Buy, 0), ink);
            canvas.FieldRight(canvas.Width - 17, y, 16, supply.Price is { } price ? Written.Money(price, Currency(desk)) : supply.Buy == 0 ? "" : "not known", ink);
            return;
        }

        var item = plan.Consumables[at - plan.Supplies.Length];
        canvas.Field(2, y, nameWidth, item.Item, ink);
        canvas.FieldRight(canvas.Width - 39, y, 12, Written.Amount(item.Needed, item.Unit, desk.Job?.Units ?? PrintUnits.Us), ink);
        if (item.Packs == 0)
            return;
        canvas.FieldRight(canvas.Width - 26, y, 8, item.Pack > 1 ? $"{item.Packs} x {item.Pack}" : Written.Number(item.Packs, 0), ink);
        if (item.Price is { } cost)
            canvas.FieldRight(canvas.Width - 17, y, 16, Written.Money(cost, Currency(desk)), ink);
    }

    private static void Detail(Reader text, JobDesk desk, Plan plan)
    {
        if (desk.SupplyAt < plan.Supplies.Length)
            Supply(text, desk, plan.Supplies[desk.SupplyAt]);
        else if (desk.SupplyAt - plan.Supplies.Length < plan.Consumables.Length)
            Consumable(text, plan.Consumables[desk.SupplyAt - plan.Supplies.Length]);
    }

    private static void Supply(Reader text, JobDesk desk, PlanSupply supply)
    {
        var units = desk.Job?.Units ?? PrintUnits.Us;
        text.Say($"{supply.Name} ({supply.Product}): {(supply.CansLow < supply.CansHigh ? $"{supply.CansLow} to " : "")}{Written.Count(supply.CansHigh, "can", "cans")}", Ink.Strong);
        var likely = supply.LikelyMl is { } ml ? $"{Written.Paint(ml, units)} likely, " : "";
        var basis = supply.Basis == PlanBasis.Covers ? "from what a can covers" : "from solids and dry film";
        text.Say($"{likely}{Written.Area(supply.AreaCoatsM2, units)} of area times coats, {basis}; the reserve comes on top.");
        foreach (var covered in supply.Covered.Where(covered => covered.Share > 0))
        {
            var filled = (int)Math.Round(covered.Share * GaugeWidth, MidpointRounding.AwayFromZero);
            var gauge = new string('█', filled) + new string('·', GaugeWidth - filled);
            text.Say($"{Written.Count(covered.Cans, "can", "cans"),8} {gauge} enough in {Written.Percent(covered.Share)} of the draws");
        }
    }

    private static void Consumable(Reader text, PlanConsumable item)
    {
        text.Say(item.Item, Ink.Strong);
        text.Say(item.Why);
    }

    private static string Currency(JobDesk desk) => desk.Job?.Prices?.Currency ?? JobDefaults.Currency;
}
