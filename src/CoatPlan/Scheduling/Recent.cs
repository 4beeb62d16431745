namespace CoatPlan.Scheduling;

/// <summary>A function of a minute with its latest answers kept, as many as have a place: for questions that come in thousands around the same minutes.</summary>
internal sealed class Recent(Func<int, int> function)
{
    private const int Places = 256;

    // Minute and answer in one, so that a look is at one place in memory.
    private readonly (int Minute, int Answer)[] known = Unasked();

    public int At(int minute)
    {
        ref var kept = ref known[minute & (Places - 1)];
        if (kept.Minute != minute)
        {
            kept = (minute, function(minute));
        }

        return kept.Answer;
    }

    private static (int Minute, int Answer)[] Unasked()
    {
        var known = new (int Minute, int Answer)[Places];
        Array.Fill(known, (int.MinValue, 0));
        return known;
    }
}
