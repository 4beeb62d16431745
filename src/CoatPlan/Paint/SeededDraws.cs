using System.Numerics;
using System.Runtime.CompilerServices;

namespace CoatPlan.Paint;

/// <summary>Random draws that are the same for the same words on every machine.</summary>
/// <remarks>
/// SplitMix64 (Steele, Lea and Flood 2014) begun at the FNV-1a hash of the words. Each surface and each product draws from a stream of its own,
/// so that a change to one leaves the luck of the others alone, and more area is more paint in every draw.
/// </remarks>
internal sealed class SeededDraws
{
    private const ulong Step = 0x9E3779B97F4A7C15;
    private const ulong FirstFactor = 0xBF58476D1CE4E5B9;
    private const ulong SecondFactor = 0x94D049BB133111EB;
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
        mixed = (mixed ^ (mixed >> 30)) * FirstFactor;
        mixed = (mixed ^ (mixed >> 27)) * SecondFactor;
        return ((mixed ^ (mixed >> 31)) >> 11) * Unit;
    }

    /// <summary>The next number between −1 and 1, likeliest at 0 and falling off straight to both ends.</summary>
    public double Around() => Even() + Even() - 1;

    /// <summary>The next numbers as <see cref="Around()"/> would bring them one by one, several at a time where the machine can.</summary>
    /// <param name="numbers">Takes them.</param>
    public void Around(Span<double> numbers)
    {
        const ulong EachTakesTwo = unchecked(2 * Step);
        var lanes = Vector<ulong>.Count;
        var first = Vector.CreateSequence(state + Step, EachTakesTwo);
        var done = 0;
        for (; done + lanes <= numbers.Length; done += lanes)
        {
            (Even(first) + Even(first + new Vector<ulong>(Step)) - Vector<double>.One).CopyTo(numbers[done..]);
            first += new Vector<ulong>((ulong)lanes * EachTakesTwo);
        }

        state += (ulong)done * EachTakesTwo;
        for (; done < numbers.Length; done++)
            numbers[done] = Around();
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> Even(Vector<ulong> mixed)
    {
        mixed = (mixed ^ (mixed >>> 30)) * new Vector<ulong>(FirstFactor);
        mixed = (mixed ^ (mixed >>> 27)) * new Vector<ulong>(SecondFactor);
        return Vector.ConvertToDouble((mixed ^ (mixed >>> 31)) >>> 11) * Unit;
    }

    private void Mix(char sign) => state = unchecked((state ^ sign) * HashPrime);
}
