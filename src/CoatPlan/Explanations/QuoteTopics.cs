using CoatPlan.Jobs;
using CoatPlan.Plans;
using CoatPlan.Supplies;

namespace CoatPlan.Explanations;

/// <summary>What can be asked of a quote.</summary>
internal static class QuoteTopics
{
    private const string Rounded = "each sum in whole minor units, half rounds away from zero (ISO 4217)";

    public static IEnumerable<Topic> Of(Workings workings, Told told)
    {
        if (workings.Quote is not { } quote || workings.Job.Prices is not { } prices)
        {
            yield return new Topic("quote", ["quote", "total"], () => Told.Sum("what a customer would be asked to pay", "none", null, "hours × price of an hour, and materials; without a price of labour there is no quote", $"{Told.JobFile} names no price of labour"));
            yield break;
        }

        var parts = new Parts(workings, told, quote, prices);
        yield return new Topic("quote.total", ["quote", "total"], parts.Total);
        yield return new Topic("quote.labourH", ["hours", "quote hours"], parts.Hours);
        yield return new Topic("quote.perHour", ["labour price"], parts.PerHour);
        yield return new Topic("quote.labour", ["labour", "quote labour"], parts.Labour);
        yield return new Topic("quote.paint", ["quote paint"], parts.Paint);
        yield return new Topic("quote.consumables", ["quote consumables"], parts.Besides);
        yield return new Topic("quote.materials", ["materials", "quote materials"], parts.Materials);
        yield return new Topic("quote.markup", ["markup", "quote markup"], parts.Markup);
        yield return new Topic("quote.tax", ["tax", "quote tax"], parts.Tax);
        yield return new Topic("quote.low", ["quote low"], () => parts.End("low", quote.Low, "shorter", "low"));
        yield return new Topic("quote.high", ["quote high"], () => parts.End("high", quote.High, "longer", "high"));
        for (var i = 0; i < quote.Hours.Length; i++)
        {
            var one = quote.Hours[i];
            yield return new Topic($"quote.hours[{i}].h", [$"hours {one.Operation}"], () => parts.HoursOf(one));
        }

        for (var i = 0; i < quote.Lines.Length; i++)
        {
            foreach (var topic in parts.Line(quote.Lines[i], i))
                yield return topic;
        }
    }

    /// <summary>The parts of one quote.</summary>
    private sealed class Parts(Workings workings, Told told, PlanQuote quote, Prices prices)
    {
        public Explanation Total() => Money("what the customer is asked to pay", quote.Total, "labour + materials + markup + tax", Labour(), Materials(), Markup(), Tax());

        public Explanation Hours() => Told.Sum(
            "person hours", $"{Told.Plain(quote.LabourH, 2)} h", quote.LabourH, "sum of the hands-on minutes of all steps × people ÷ 60", "the plan's own steps", [.. quote.Hours.Select(one => (Explanation?)(HoursOf(one) with { Inputs = [] }))]);

        public Explanation HoursOf(PlanHours one) => Told.Sum(
            $"person hours of {one.Operation}", $"{Told.Plain(one.H, 2)} h", one.H, "sum of the hands-on minutes of its steps × people ÷ 60", "the plan's own steps",
            [.. workings.Steps.Where(step => step.Kind == one.Operation).Select(step => (Explanation?)Told.Given($"“{step.Title}”", Told.Minutes(step.HandsMin * step.People), "see its handsMin", step.HandsMin * step.People))]);

        public Explanation PerHour() => Given("price of one hour of labour", quote.PerHour);

        public Explanation Labour() => Money("labour", quote.Labour, "hours × price of an hour", Hours() with { Inputs = [] }, PerHour());

        public Explanation Paint() => Money(
            "paint that is bought", quote.Paint, "Σ price of one × packs bought whole × packages in a pack",
            [.. workings.Supplies.Where(supply => supply.Price is not null).Select(supply => (Explanation?)Given($"{supply.Name}, {Told.Plain(supply.Buy)} to buy", supply.Price!.Value))]);

        public Explanation Besides() => Money(
            "what is used up besides paint", quote.Consumables, "Σ packs × price of one pack, as far as prices are known",
            [.. workings.Consumables.Where(one => one.Price is > 0).Select(one => (Explanation?)Given($"{one.Item}, {Told.Plain(one.Packs)} {(one.Packs == 1 ? "pack" : "packs")}", one.Price!.Value))]);

        public Explanation Materials() => Money("materials before markup", quote.Materials, "paint + what is used up besides", Paint(), Besides());

        public Explanation Markup() => Money(
            "markup", quote.Markup, "materials × markup", Materials() with { Inputs = [] }, Told.Given("markup", Told.Percent(prices.Markup.DecimalFractions), Told.JobFile, prices.Markup.DecimalFractions));

        public Explanation Tax() => Money(
            "tax", quote.Tax, prices.TaxOn == TaxBase.All ? "(materials + markup + labour) × tax" : "(materials + markup) × tax",
            Materials() with { Inputs = [] }, Markup() with { Inputs = [] }, prices.TaxOn == TaxBase.All ? Labour() with { Inputs = [] } : null,
            Told.Given("tax", Told.Percent(prices.Tax.DecimalFractions), Told.JobFile, prices.Tax.DecimalFractions));

        public Explanation End(string name, decimal money, string hands, string cans) => Money(
            $"the {name} end of the quote", money, $"the same sums with all hands-on times {hands} by their spread and the {cans} number of cans", told.Figure("hands-spread"), Hours() with { Inputs = [] });

        public IEnumerable<Topic> Line(PlanQuoteLine line, int at)
        {
            var name = workings.Surfaces.First(surface => surface.Id == line.Surface).Name;
            Topic Say(string field, decimal money, string formula, Func<Explanation> whole) => new(
                $"quote.lines[{at}].{field}", [$"quote {line.Surface} {field}", $"quote.lines[{line.Surface}].{field}", .. field == "total" ? ImmutableArray.Create($"quote {line.Surface}") : []],
                () => Money($"{field} of {name}", money, $"{formula}; what is left over in rounding goes where most was cut off, so the lines add to the whole", whole() with { Inputs = [] }));

            yield return Say("labour", line.Labour, "labour × its own hands-on minutes ÷ those of all surfaces: work for the whole job is shared so", Labour);
            yield return Say("materials", line.Materials, "paint × its part of what is sprayed of each product + what is used up besides × its part of labour", Materials);
            yield return Say("markup", line.Markup, "markup × its materials ÷ all materials", Markup);
            yield return Say("tax", line.Tax, "tax × what is taxed of it ÷ what is taxed in all", Tax);
            yield return Say("total", line.Total, "its labour + materials + markup + tax", Total);
        }

        private Explanation Money(string what, decimal money, string formula, params ImmutableArray<Explanation?> inputs) =>
            Told.Sum(what, MinorUnits.Write(money, quote.Currency), (double)money, formula, Rounded, inputs);

        private Explanation Given(string what, decimal money) => Told.Given(what, MinorUnits.Write(money, quote.Currency), Told.JobFile, (double)money);
    }
}
