namespace CoatPlan.Tests.Validator;

/// <summary>Area-coats, cans and what is to be bought follow from the steps by the contract's own sums.</summary>
internal static class SupplyRules
{
    private const double AreaSlack = 0.002;

    // Clearing the nozzle and the last of a can, as a share of a can for each coat sprayed.
    private const double LossOfSession = 0.25;

    public static IEnumerable<Violation> Check(PlanUnderTest test) =>
    [
        .. test.Coats.Where(step => step.Product is not null && test.Plan.Supplies.All(row => row.Product != step.Product))
            .Select(step => new Violation(Rules.SupplyMissing, step.Id, $"{step.Product} is sprayed and not among the supplies")),
        .. test.Plan.Supplies.SelectMany(row => Row(test, row)),
    ];

    private static IEnumerable<Violation> Row(PlanUnderTest test, PlannedSupply row)
    {
        var (least, most) = AreaCoats(test, row.Product);
        if (!test.ClaimsWhole)
        {
            // What could not be placed has still to be bought.
            most = Math.Max(most, row.AreaCoatsM2);
        }

        if (row.AreaCoatsM2 < least * (1 - AreaSlack) - 0.002 || row.AreaCoatsM2 > most * (1 + AreaSlack) + 0.002)
        {
            yield return new Violation(Rules.AreaCoats, row.Product, $"{row.AreaCoatsM2} m² is not the {least} to {most} of its coats");
        }

        if (row.Low > row.Cans || row.Cans > row.High)
        {
            yield return new Violation(Rules.CansOrder, row.Product, $"{row.Low}, {row.Cans}, {row.High} do not rise");
        }

        double shelf = test.Job.Have.GetValueOrDefault(row.Product);
        if (row.Buy != Math.Max(0, Math.Ceiling(row.Cans - shelf)))
        {
            yield return new Violation(Rules.Buy, row.Product, $"{row.Buy} to buy, {row.Cans} needed, {shelf} there");
        }

        if (test.Label(row.Product) is not { } label)
        {
            yield break;
        }

        if (label is { Price: { } price, HasPack: false } && Math.Abs((row.Price ?? double.NaN) - row.Buy * price) is not (< 0.006))
        {
            yield return new Violation(Rules.Price, row.Product, $"{row.Price} for {row.Buy} at {price}");
        }

        if (label.CoversM2 is not { } covers)
        {
            yield break;
        }

        double demand = least / covers * (1 + test.Job.Reserve);
        if (row.Cans < Math.Ceiling(demand - AreaSlack))
        {
            yield return new Violation(Rules.CansBelowDemand, row.Product, $"{row.Cans} cans for a demand of {demand}");
        }

        int sessions = test.Coats.Count(step => step.Product == row.Product);
        bool onlyPanels = test.Coats.Where(step => step.Product == row.Product).SelectMany(step => step.Surfaces).All(id => test.Job.Surface(id) is { IsPanel: true });
        if (test.ClaimsWhole && row.Basis == "covers" && onlyPanels && row.Cans > Math.Max(row.Low, Math.Ceiling(1.5 * most / covers * (1 + test.Job.Reserve) + LossOfSession * sessions) + 1))
        {
            yield return new Violation(Rules.CansOverDemand, row.Product, $"{row.Cans} cans for a demand of {most / covers * (1 + test.Job.Reserve)}");
        }
    }

    /// <summary>Least and most, since only a preset knows how much of a surface is bare where the job does not say.</summary>
    private static (double Least, double Most) AreaCoats(PlanUnderTest test, string product)
    {
        double least = 0, most = 0;
        foreach (var step in test.Coats.Where(step => step.Product == product && step.Layer is not null))
        {
            for (int i = 0; i < step.Surfaces.Length; i++)
            {
                var planned = test.Plan.Surfaces.FirstOrDefault(surface => surface.Id == step.Surfaces[i]);
                if (planned is null || test.Job.Surface(planned.Id) is not { } asked)
                {
                    continue;
                }

                var layers = test.Job.Systems[asked.System];
                bool spots = step.Layer <= layers.Length && layers[step.Layer!.Value - 1].OnlyBare;
                double area = planned.AreaM2 * step.Pieces[i] * (step.Mist ? 0.5 : 1);
                double? share = spots ? asked.BareShare ?? (asked.IsBare ? 1 : null) : 1;
                least += area * (share ?? 0);
                most += area * (share ?? 1);
            }
        }

        return (least, most);
    }
}
