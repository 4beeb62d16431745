namespace CoatPlan.Paint;

/// <summary>Demands are fractions, packages are whole.</summary>
public static class WholePackages
{
    /// <summary>How near to a whole number a demand is that number.</summary>
    private const double Nearly = 1e-9;

    /// <summary>The smallest whole number that covers a demand; a demand within 1e-9 of a whole number is that number.</summary>
    /// <param name="demand">Packages, at least 0 and finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">A demand under 0, or too large to count.</exception>
    public static int For(double demand)
    {
        if (!(demand >= 0 && demand < int.MaxValue))
            throw Uncountable(demand);

        return (int)Math.Ceiling(demand - Nearly);
    }

    private static ArgumentOutOfRangeException Uncountable(double demand) => new(nameof(demand), demand, "At least 0 and countable.");
}
