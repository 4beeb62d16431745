namespace CoatPlan;

/// <summary>Two plans side by side: with a heater and without, with another product, with one more helper.</summary>
/// <param name="First">What the first comes to.</param>
/// <param name="Second">What the second comes to.</param>
public sealed record PlanComparison(ComparedPlan First, ComparedPlan Second)
{
    /// <summary>Minutes by which the second finishes later, below 0 where it is earlier; null where one of them could not be placed in full.</summary>
    public long? FinishMovesMin => First is { IsWhole: true, Finish: { } first } && Second is { IsWhole: true, Finish: { } second } ? Period.Between(first, second, PeriodUnits.Minutes).Minutes : null;

    /// <summary>How many cans more the second needs.</summary>
    public int MoreCans => Second.Cans - First.Cans;

    /// <summary>How much more is paid for what the second buys; null where one price is not known.</summary>
    public decimal? MorePrice => Second.Price - First.Price;

    /// <summary>How much more a customer is asked for the second; null where one has no quote, or the currencies differ.</summary>
    public decimal? MoreQuote => First.Currency == Second.Currency ? Second.Quote - First.Quote : null;

    /// <summary>Warnings that the second alone has.</summary>
    public ImmutableArray<string> NewWarnings => [.. Second.Warnings.Except(First.Warnings, StringComparer.Ordinal)];

    /// <summary>Warnings that the first alone has.</summary>
    public ImmutableArray<string> GoneWarnings => [.. First.Warnings.Except(Second.Warnings, StringComparer.Ordinal)];

    /// <summary>Two plans side by side.</summary>
    /// <param name="firstName">What the person calls the first.</param>
    /// <param name="first">The first plan.</param>
    /// <param name="secondName">What the person calls the second.</param>
    /// <param name="second">The second plan.</param>
    public static PlanComparison Of(string firstName, Plan first, string secondName, Plan second) =>
        new(ComparedPlan.Of(firstName, first), ComparedPlan.Of(secondName, second));
}
