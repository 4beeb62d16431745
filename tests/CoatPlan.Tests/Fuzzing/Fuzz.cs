using System.Diagnostics;
using System.Globalization;

namespace CoatPlan.Tests.Fuzzing;

/// <summary>
/// Runs a check on many seeds. In the suite a few; by hand as many as <c>COATPLAN_FUZZ</c> says, from the seed <c>COATPLAN_FUZZ_FROM</c>. A seed that failed is
/// kept in its test and runs first ever after.
/// </summary>
internal static class Fuzz
{
    private static readonly string? Asked = Environment.GetEnvironmentVariable("COATPLAN_FUZZ");

    private static readonly int From = int.Parse(Environment.GetEnvironmentVariable("COATPLAN_FUZZ_FROM") ?? "1", CultureInfo.InvariantCulture);

    private const long MostBytes = 200L * 1024 * 1024;

    /// <summary>Runs it.</summary>
    /// <param name="usual">Seeds in the suite.</param>
    /// <param name="kept">Seeds that failed once.</param>
    /// <param name="one">One case: draws from the generator, throws where something is wrong.</param>
    public static void Run(int usual, ReadOnlySpan<int> kept, Action<Random> one)
    {
        foreach (var seed in kept)
            Case(seed, one);

        var (slowest, at) = (TimeSpan.Zero, 0);
        var count = Asked is null ? usual : int.Parse(Asked, CultureInfo.InvariantCulture);
        for (var seed = From; seed < From + count; seed++)
        {
            var before = Stopwatch.GetTimestamp();
            Case(seed, one);
            var took = Stopwatch.GetElapsedTime(before);
            if (took > slowest)
                (slowest, at) = (took, seed);
        }

        // For whoever runs them by hand: on a machine that others share, no limit on time is a test.
        if (Asked is not null)
            TestContext.Current.TestOutputHelper?.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{count} seeds; slowest {slowest.TotalMilliseconds:0} ms (seed {at})"));
    }

    private static void Case(int seed, Action<Random> one)
    {
        try
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            one(new Random(seed));
            // All that was ever asked for, and so no less than what was held at once.
            (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBeLessThan(MostBytes, "bytes of memory");
        }
        catch (Exception exception)
        {
            throw new InvalidOperationException($"seed {seed.ToString(CultureInfo.InvariantCulture)}: {exception.Message}", exception);
        }
    }
}
