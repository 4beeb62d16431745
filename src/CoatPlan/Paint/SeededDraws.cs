namespace CoatPlan.Paint;

/// <summary>Random draws that are the same for the same words on every machine.</summary>
/// <remarks>
/// SplitMix64 (Steele, Lea and Flood 2014) begun at the FNV-1a hash of the words. Each surface and each product draws from a stream of its own,
/// so that a change to one leaves the luck of the others alone, and more area is more paint in every draw.
/// </remarks>
internal sealed class SeededDraws
{
    private const ulong Step = 0x9E3779B97F4A7C15;
    private const ulong HashStart = 0xCBF29CE484222325;
    private const ulong HashPrime = 0x100000001B3;
    private const double Unit = 1.0 / (1UL << 53);

    private ulong state;

    /// <summary>The stream of some words.</summary>
    public SeededDraws(params ReadOnlySpan<string> words)
    {
        state = HashStart;
        foreach (var word in words)
        {
            foreach (var sign in word)
                Mix(sign);
            // An end mark that no text holds, so that ("ab", "c") and ("a", "bc") differ.
            Mix(char.MaxValue);
        }
    }

    /// <summary>The next number, even over 0 up to but not 1.</summary>
    public double Even()
    {
        state += Step;
        var mixed = state;
        mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return ((mixed ^ (mixed >> 31)) >> 11) * Unit;
    }

    /// <summary>The next number between −1 and 1, likeliest at 0 and falling off straight to both ends.</summary>
    public double Around() => Even() + Even() - 1;

    private void Mix(char sign) => state = unchecked((state ^ sign) * HashPrime);
}
