namespace CoatPlan.Scheduling;

/// <summary>Random draws that are the same on every machine.</summary>
/// <remarks>SplitMix64. Source: G. L. Steele, D. Lea, C. H. Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014.</remarks>
internal sealed class Draws(ulong seed)
{
    private ulong state = seed;

    /// <summary>A whole number from 0 up to but not including a limit of 1 or more.</summary>
    public int Below(int limit) => (int)(((Next() >> 32) * (ulong)limit) >> 32);

    private ulong Next()
    {
        state += 0x9E3779B97F4A7C15UL;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }
}
