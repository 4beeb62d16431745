using CoatPlan.Jobs;
using CoatPlan.Supplies;

namespace CoatPlan.Explanations;

/// <summary>What can be asked of what is used up besides paint.</summary>
internal static class ConsumableTopics
{
    public static IEnumerable<Topic> Of(Workings workings)
    {
        for (var i = 0; i < workings.Besides.Length; i++)
        {
            var need = workings.Besides[i];
            var at = i;
            var row = workings.Catalogue.Consumable(need.Word);
            var source = Told.From(row.Provenance);
            Topic Say(string field, string name, Func<Explanation> explain) => new(
                $"consumables[{need.Word}].{field}", [$"{name} {need.Word}", $"consumables[{at}].{field}", $"{name} {need.Item}"], explain);

            string Written(double amount)
            {
                var (here, unit) = UnitWords.In(amount, need.Unit, workings.Job.Units);
                return $"{Told.Plain(here, 2)} {UnitWords.Behind(here, unit)}";
            }

            Explanation Needed() => Told.Sum(
                $"{need.Item}: how many the job takes", Written(need.Needed), need.Needed, $"counted use by use and rounded up: {need.Why}", source,
                row.Range.Length > 0 ? Told.Given("usual range", row.Range, source) : null);
            Explanation Amount() => Told.Sum(
                $"{need.Item}: how many to get", Written(need.Amount), need.Amount, "needed − on the shelf, rounded up, at least 0", "the job file's contract",
                Needed(), Told.Given("taken from the shelf", Written(need.Needed - need.Amount), Told.JobFile));
            Explanation Pack() => Told.Given("how many are sold together", Told.Plain(need.Pack), need.Pack == row.Pack ? source : Told.JobFile, need.Pack);
            Explanation Packs() => Told.Sum(
                $"{need.Item}: packs to buy", Told.Plain(need.Packs), need.Packs, "to get ÷ pack, rounded up, what is left of a pack bought under the same name used first", "packs are bought whole", Amount(), Pack());

            yield return Say("amount", "amount", Amount);
            yield return Say("needed", "needed", Needed);
            yield return Say("pack", "pack", Pack);
            yield return Say("packs", "packs", Packs);
            if (need.Price is { } price)
            {
                yield return Say("price", "price", () => Told.Sum(
                    $"{need.Item}: price of what is bought", MinorUnits.Write(price, workings.Job.Prices?.Currency ?? JobDefaults.Currency), (double)price, "packs × price of one pack", "the job file or the shop's own presets", Packs()));
            }
        }
    }
}
