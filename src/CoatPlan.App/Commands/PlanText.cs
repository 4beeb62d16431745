using System.Globalization;
using CoatPlan.App.Wording;
using CoatPlan.Jobs;
using CoatPlan.Plans;
using CoatPlan.Quantities;
using CoatPlan.Sheets.Content;

namespace CoatPlan.App.Commands;

/// <summary>A plan as text that can be followed at the bench: what it comes to, the steps by day, what to buy, mask, breathe and beware of.</summary>
internal static class PlanText
{
    private const int Indent = Page.Indent;

    private const int StepIndent = 19;

    /// <summary>The lines of the plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="style">Units, currency, width, emphasis.</param>
    public static IReadOnlyList<string> Lines(Plan plan, TextStyle style) =>
        Page.Of(style, page =>
        {
            Head(page, plan);
            Reasons(page, plan);
            Warnings(page, plan);
            Surfaces(page, plan);
            Steps(page, plan);
            Rests(page, plan);
            Idle(page, plan);
            Shopping(page, plan);
            Masks(page, plan);
            Air(page, plan);
            Quote(page, plan);
            Cautions(page, plan);
        });

    private static void Head(Page page, Plan plan)
    {
        var style = page.Style;
        page.Title(plan.Job);
        page.Field("Finish", Finish(plan));
        if (plan.InService is { } inService)
            page.Field("In service", Clock.Moment(inService));
        if (plan is { IsWhole: true, LowerBound: { } bound })
            page.Field("Not before", $"{Clock.Moment(bound)}; no plan can finish earlier");
        if (!plan.Steps.IsEmpty)
            page.Field("Hands-on", $"{Written.Minutes(plan.Steps.Sum(step => step.HandsMin * step.People))} of work over {Written.Count(DaysOf(plan).Count, "day", "days")}");
        page.Field("Cans", $"{plan.Supplies.Sum(supply => supply.Cans)}, of which {plan.Supplies.Sum(supply => supply.Buy)} to buy{PriceOf(plan, style)}");
        if (plan.Quote is { } quote)
            page.Field("Quote", $"{Written.Money(quote.Total, quote.Currency)} ({Written.Money(quote.Low, quote.Currency)} to {Written.Money(quote.High, quote.Currency)}){(plan.IsWhole ? "" : "; for the part that could be placed")}");
        page.Field("Respirator", plan.Respirator.Kind);
        page.Field("Warnings", plan.Warnings.IsEmpty ? "none" : plan.Warnings.Length.ToString(CultureInfo.InvariantCulture));
    }

    private static string Finish(Plan plan) => plan switch
    {
        { Finish: null } => "nothing could be placed",
        { IsWhole: false, Finish: { } part } => $"none; the part that could be placed ends {Clock.Moment(part)}",
        { Finish: { } finish } => $"{Clock.Moment(finish)}{Asked(plan, finish)}",
    };

    private static string Asked(Plan plan, LocalDateTime finish) => plan.FinishBy switch
    {
        null => "",
        { } asked when finish <= asked => $"; asked by {Clock.Moment(asked)}: met",
        { } asked => $"; asked by {Clock.Moment(asked)}: missed",
    };

    private static string PriceOf(Plan plan, TextStyle style)
    {
        var known = plan.Supplies.Where(supply => supply.Buy > 0 && supply.Price is not null).ToList();
        var unknown = plan.Supplies.Count(supply => supply.Buy > 0 && supply.Price is null);
        if (known.Count == 0)
            return "";

        var sum = Written.Money(known.Sum(supply => supply.Price!.Value), style.Currency);
        return unknown == 0 ? $": {sum}" : $": {sum} and {Written.Count(unknown, "product", "products")} of unknown price";
    }

    private static void Reasons(Page page, Plan plan)
    {
        if (plan.Reasons.IsEmpty)
            return;

        page.Heading("There is no plan that meets what was asked");
        foreach (var reason in plan.Reasons)
            page.Bullet("-", reason);
        if (plan.WaysOut.IsEmpty)
            return;

        page.Heading("Ways out, each tried");
        foreach (var way in plan.WaysOut)
            page.Bullet("-", Sentences.WayOut(way));
    }

    private static void Warnings(Page page, Plan plan)
    {
        if (plan.Warnings.IsEmpty)
            return;

        page.Heading("Warnings");
        foreach (var warning in plan.Warnings)
            page.Bullet("!", $"{Where(plan, warning)}{warning.Text} [{warning.Code}]");
    }

    private static string Where(Plan plan, PlanWarning warning)
    {
        var surface = plan.Surfaces.FirstOrDefault(known => known.Id == warning.Surface)?.Name;
        return (surface, warning.Product) switch
        {
            (null, null) => "",
            ({ } name, null) => $"{name}: ",
            (null, { } product) => $"{product}: ",
            ({ } name, { } product) => $"{name}, {product}: ",
        };
    }

    private static void Surfaces(Page page, Plan plan)
    {
        page.Heading("Surfaces");
        foreach (var surface in plan.Surfaces)
        {
            var ready = surface.ReadyAt is { } at ? $"ready {Clock.Moment(at)}" : "not placed";
            var tag = surface.Tag is { } number ? $"; comes off, tag {number}" : "; stays on";
            page.Bullet("-", $"{PlanWords.Name(surface)}: {surface.Material}, {surface.Finish}, {string.Join(", ", surface.Condition)}; "
                + $"{Written.Area(surface.AreaM2, page.Style.Units)} a piece{tag}; {surface.System}; {ready}");
            foreach (var layer in plan.Layers.Where(layer => layer.Surface == surface.Id && layer.PrimerShade is not null))
            {
                var name = plan.Supplies.FirstOrDefault(supply => supply.Product == layer.Product)?.Name ?? layer.Product;
                page.Bullet(" ", $"A {layer.PrimerShade} primer below would let {name} hide in {Written.Count(layer.PrimerCoats!.Value, "coat", "coats")} instead of {layer.ForHiding}.");
            }
        }
    }

    private static void Steps(Page page, Plan plan)
    {
        PlanLimits? said = null;
        foreach (var (day, steps) in DaysOf(plan))
        {
            page.Heading(Clock.Day(day));
            var open = plan.OpenHours.Where(span => span.From.Date == day).Select(span => Clock.Span(span.From, span.To)).ToList();
            if (open.Count > 0)
                page.Text(Indent, $"working hours {string.Join(", ", open)}");
            foreach (var step in steps)
            {
                Step(page, plan, step, day);
                Readings(page, step, said);
                page.Text(StepIndent, $"why: {step.Why}");
                foreach (var note in step.Notes)
                    page.Text(StepIndent, $"mind: {note}");
                said = step.Limits ?? said;
            }
        }
    }

    private static SortedDictionary<LocalDate, List<PlanStep>> DaysOf(Plan plan)
    {
        var days = new SortedDictionary<LocalDate, List<PlanStep>>();
        foreach (var step in plan.Steps)
        {
            if (!days.TryGetValue(step.Start.Date, out var steps))
                days[step.Start.Date] = steps = [];
            steps.Add(step);
        }

        return days;
    }

    private static void Step(Page page, Plan plan, PlanStep step, LocalDate day)
    {
        page.Blank();
        var box = step.Done ? "[x]" : "[ ]";
        var station = step.Station is { } number ? $"Station {number}: " : "";
        var clock = $"{box} {Clock.Time(step.Start)}-{Clock.Time(step.End)}".PadRight(StepIndent - Indent);
        page.Strong(Indent, clock, $"{station}{step.Title}");
        if (step.End.Date != day)
            page.Text(StepIndent, $"until {Clock.Moment(step.End)}");
        page.Text(StepIndent, $"{Hands(step)}; {Sentences.SurfacesOf(plan, step)}");
        foreach (var wait in Sentences.WaitsOf(plan, step))
            page.Text(StepIndent, wait);
        if (step.WaitsFor.Length > 0)
            page.Text(StepIndent, $"timing: {step.WaitsFor}");
        if (step.Passes is { } passes)
        {
            var units = page.Style.Units;
            page.Text(StepIndent, $"passes {Written.ByHand(passes.FanM, units)} wide, {Written.ByHand(passes.SpacingM, units)} apart, nozzle {Written.ByHand(passes.DistanceM, units)} off");
        }

        if (step.LastSafeStart is { } last)
            page.Text(StepIndent, $"last safe start: {Clock.MomentSeenFrom(last, day)}{Sentences.Then(step)}");
        if (!step.Done)
            page.Text(StepIndent, $"slack: {Sentences.SlackOf(step)}");
    }

    private static void Rests(Page page, Plan plan)
    {
        if (plan.RestPoints.IsEmpty)
            return;

        page.Heading("Where the job can rest a week without rework");
        foreach (var point in plan.RestPoints)
            page.Bullet("-", $"after {TitleOf(plan, point.After)}, from {Clock.Moment(point.At)}");
    }

    private static void Idle(Page page, Plan plan)
    {
        if (plan.Idle.IsEmpty)
            return;

        page.Heading("Idle hours, and why");
        foreach (var idle in plan.Idle)
            page.Bullet("-", Sentences.IdleOf(idle));
    }

    private static void Readings(Page page, PlanStep step, PlanLimits? said)
    {
        if (step.Limits is not { } limits)
            return;

        page.Text(StepIndent, $"expected: {Sentences.AirOf(step, page.Style.Units)}");
        page.Text(StepIndent, limits == said ? "read before you start: the limits of the coat before" : $"read before you start: {Sentences.LimitsOf(limits, page.Style.Units)}");
    }

    private static string Hands(PlanStep step)
    {
        var people = step.People > 1 ? $", {step.People} people" : "";
        var spray = (step.Spray, step.Ml) switch
        {
            (true, not null) => " of spraying",
            _ => " of work",
        };
        var dust = step.MakesDust ? ", makes dust" : "";
        return $"{Written.Minutes(step.HandsMin)}{spray}{people}{dust}";
    }

    private static void Shopping(Page page, Plan plan)
    {
        page.Heading("To have");
        foreach (var supply in plan.Supplies)
        {
            var amount = supply.LikelyMl is { } ml ? $"{Written.Paint(ml, page.Style.Units)} likely, " : "";
            var basis = supply.Basis == PlanBasis.Covers ? "by coverage" : "by solids";
            var price = supply.Price is { } known ? $", {Written.Money(known, page.Style.Currency)}" : "";
            page.Bullet("[ ]", $"{supply.Name}: {Written.Count(supply.Cans, "can", "cans")} ({supply.CansLow} to {supply.CansHigh}), buy {supply.Buy}{Packs(supply)}{price}; "
                + $"{amount}{basis}. {Enough(supply)}{Clearing(supply)}{Panel(supply, page.Style.Units)}{Ozone(supply)}");
        }

        foreach (var can in plan.Weighed)
        {
            var name = plan.Supplies.FirstOrDefault(supply => supply.Product == can.Product)?.Name ?? can.Product;
            page.Bullet("-", $"{name}, weighed after coat {can.Coat}: {Written.Number(can.LeftCans, 2)} of a can left; the next coat takes {Written.Number(can.NextCans, 2)}, "
                + $"all that follow {Written.Number(can.RestCans, 2)}: {(can.Lasts ? "it lasts for the next coat" : "it runs out in the next coat")}.");
        }

        foreach (var item in plan.Consumables)
            page.Bullet("[ ]", $"{item.Item}: {Written.Amount(item.Amount, item.Unit, page.Style.Units)}{Packs(item, page.Style)}. {item.Why}");
    }

    private static string Enough(PlanSupply supply) => supply.Covered.IsEmpty
        ? ""
        : $"Enough in the draws: {string.Join(", ", supply.Covered.Where(covered => covered.Share > 0).Select(covered => $"{covered.Cans} in {Written.Percent(covered.Share)}"))}.";

    private static string Clearing(PlanSupply supply) => supply.Sessions > 0
        ? $" Taken up {Written.Count(supply.Sessions, "time", "times")}: {Written.Number(supply.ClearedCans, 2)} of a can to clear the nozzle."
        : "";

    private static string Panel(PlanSupply supply, PrintUnits units) => supply.PanelGrams is { } grams
        ? $" A test panel of {Written.Area(supply.PanelM2, units)} should take {Written.Number(grams, 1)} g a coat."
        : "";

    private static string Ozone(PlanSupply supply) => supply.OzonePerCanG is { } grams
        ? $" A can's vapour may form {Written.Number(grams, 0)} g of ozone outdoors."
        : "";

    private static string Packs(PlanSupply supply) => supply is { Pack: > 1, Packs: > 0 } ? $" in {Written.Count(supply.Packs, "pack", "packs")} of {supply.Pack}" : "";

    private static string Packs(PlanConsumable item, TextStyle style)
    {
        var packs = item is { Pack: > 1, Packs: > 0 } ? $", {Written.Count(item.Packs, "pack", "packs")} of {item.Pack}" : "";
        var price = item is { Price: { } known, Packs: > 0 } ? $", {Written.Money(known, style.Currency)}" : "";
        return packs + price;
    }

    private static void Masks(Page page, Plan plan)
    {
        if (plan.Masks.IsEmpty)
            return;

        page.Heading("To mask");
        foreach (var mask in plan.Masks)
        {
            var surface = plan.Surfaces.FirstOrDefault(known => known.Id == mask.Surface)?.Name ?? mask.Surface;
            var kind = mask.Kind is { } known && !mask.What.Contains(known, StringComparison.OrdinalIgnoreCase) ? $" ({known})" : "";
            var tape = mask.EdgeM is { } edge ? $", {Written.Length(edge, page.Style.Units)} of tape" : "";
            var film = mask.AreaM2 is { } area ? $", {Written.Area(area, page.Style.Units)} of film" : "";
            page.Bullet("[ ]", $"{surface}: {mask.What}{kind}{tape}{film}");
        }
    }

    private static void Air(Page page, Plan plan)
    {
        var (air, units) = (plan.Air, page.Style.Units);
        page.Heading("Air and respirator");
        page.Bullet("-", $"Wear: {plan.Respirator.Kind}.");
        foreach (var why in plan.Respirator.Why)
            page.Bullet("-", why);

        var place = air.RoomM3 is { } room ? $"Room {Written.Room(room, units)}" : "Outdoors";
        page.Bullet("-", $"{place}, exhaust {Written.AirFlow(air.ExhaustM3PerMin, units)}, mixing factor {Written.Number(air.Mixing, 1)}.");
        if (air.ByStep.MaxBy(step => step.MixtureRatio) is { } worst)
        {
            page.Bullet("-", $"Highest solvent mixture: {Written.Number(worst.MixtureRatio, 2)} times the limit, {Side(worst.MixtureRatio)}, during {TitleOf(plan, worst.Step)}.");
            var densest = air.ByStep.MaxBy(step => step.LelRatio)!;
            page.Bullet("-", $"Highest share of the lower explosive limit: {Written.Percent(densest.LelRatio)}, during {TitleOf(plan, densest.Step)}.");
            page.Bullet("-", $"Average over the worst 8 hours: {Written.Number(air.TwaMixtureRatio, 2)} times the limit, {Side(air.TwaMixtureRatio)}.");
        }

        if (air.ByStep.Where(step => step.PurgeMin is not null).MaxBy(step => step.PurgeMin) is { PurgeMin: > 0 } longest)
            page.Bullet("-", $"Longest purge: {Written.Minutes(longest.PurgeMin!.Value)} of exhaust after {TitleOf(plan, longest.Step)}.");
        if (air.ByStep.FirstOrDefault(step => step.PurgeMin is null) is { } never)
            page.Bullet("-", $"After {TitleOf(plan, never.Step)} the mixture does not come under its limit with this exhaust.");
        if (air.ExhaustForLimitM3PerMin is { } forLimit)
            page.Bullet("-", $"Exhaust that would keep the mixture under its limit: {Written.AirFlow(forLimit, units)}.");
        if (air.ExhaustForLelM3PerMin is { } forLel)
            page.Bullet("-", $"Exhaust that would keep vapour under 10 % of the lower explosive limit: {Written.AirFlow(forLel, units)}.");
        foreach (var note in air.Notes)
            page.Bullet("-", note);
        if (air.DilutionForLelM3PerMin is { } dilution)
            page.Bullet("-", $"The same for 10 % of the lower explosive limit: {Written.AirFlow(dilution, units)} (29 CFR 1910.94(c)(6)(ii)).");
        if (!air.BySolvent.IsEmpty)
            page.Text(Indent, "By solvent, ppm in the mixed room: highest minute / 15 min / 8 h; 8-hour limit; 15 min limit; immediately dangerous; most that this respirator may be worn in.");
        foreach (var one in air.BySolvent)
        {
            page.Text(Indent + 2, $"{one.Name}: {Ppm(one.PeakPpm)} / {Ppm(one.Mean15MinPpm)} / {Ppm(one.Mean8HPpm)}; {Ppm(one.LimitPpm)}; {Ppm(one.ShortTermPpm)}; {Ppm(one.IdlhPpm)}; {Ppm(one.MaximumUsePpm)}");
        }
    }

    private static string Ppm(double? ppm) => ppm is { } known ? Written.Number(known, known < 10 ? 1 : 0) : "none";

    private static string Side(double ratio) => ratio > 1 ? "above it" : "not above it";

    private static string TitleOf(Plan plan, string id) =>
        plan.Steps.FirstOrDefault(step => step.Id == id) is { } step ? $"“{step.Title}” ({Clock.Moment(step.Start)})" : id;

    private static void Quote(Page page, Plan plan)
    {
        if (plan.Quote is not { } quote)
            return;

        page.Heading("Quote");
        foreach (var work in quote.Hours)
            page.Row($"  {work.Operation}", QuantityFormat.Hours(Duration.FromHours(work.H)));
        page.Amount($"Labour, {QuantityFormat.Hours(Duration.FromHours(quote.LabourH))} at {Plain(quote.PerHour, quote.Currency)}", quote.Labour, quote.Currency);
        page.Amount("  Paint", quote.Paint, quote.Currency);
        page.Amount("  Used up besides", quote.Consumables, quote.Currency);
        page.Amount("Materials", quote.Materials, quote.Currency);
        page.Amount("Markup on materials", quote.Markup, quote.Currency);
        page.Amount("Tax", quote.Tax, quote.Currency);
        page.Amount("Total", quote.Total, quote.Currency);
        page.Text(Indent, $"between {Written.Money(quote.Low, quote.Currency)} where all goes well and {Written.Money(quote.High, quote.Currency)} where little does");
        page.Text(Indent, "By surface, so that one can be dropped (labour, materials, markup, tax, together):");
        foreach (var line in quote.Lines)
        {
            var name = plan.Surfaces.FirstOrDefault(known => known.Id == line.Surface) is { } surface ? PlanWords.Name(surface) : line.Surface;
            page.Text(Indent + 2, $"{name}: {string.Join(", ", new[] { line.Labour, line.Materials, line.Markup, line.Tax }.Select(money => Plain(money, quote.Currency)))}; {Written.Money(line.Total, quote.Currency)}");
        }

        foreach (var left in quote.NotIncluded)
            page.Bullet("-", $"Not included: {left}");
    }

    private static string Plain(decimal money, string currency) => Written.Money(money, currency)[..^(currency.Length + 1)];

    private static void Cautions(Page page, Plan plan)
    {
        page.Heading("Cautions");
        foreach (var caution in plan.Cautions)
            page.Bullet("-", $"{caution.Text} ({caution.Source})");
    }
}
