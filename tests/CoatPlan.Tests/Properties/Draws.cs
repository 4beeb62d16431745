using System.Globalization;
using CsCheck;

namespace CoatPlan.Tests.Properties;

/// <summary>
/// The same draws on every machine: the seed and the count stand here, and COATPLAN_SEED and COATPLAN_DRAWS change them for a longer search. A failure names the seed
/// of its draw.
/// </summary>
internal static class Draws
{
    private const int DefaultSeed = 20270514;

    /// <summary>So many jobs, or one of several equal parts of them.</summary>
    public static IEnumerable<(int Seed, DrawnJob Job)> Jobs(int count, int part = 0, int parts = 1)
    {
        int first = Number("COATPLAN_SEED", DefaultSeed);
        for (int i = part; i < Number("COATPLAN_DRAWS", count); i += parts)
        {
            yield return (first + i, JobGen.Any.Generate(new PCG(7, (ulong)(first + i)), null, out _));
        }
    }

    private static int Number(string name, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.Integer, CultureInfo.InvariantCulture, out int value) ? value : otherwise;
}
