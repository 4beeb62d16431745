namespace CoatPlan.Paint;

/// <summary>Numbers of one stream, a stretch of draws at a time: a whole job's draws at once would be megabytes, a stretch stays near the processor.</summary>
internal sealed class DrawnStretch(SeededDraws stream)
{
    /// <summary>Draws in a stretch, a whole number of whatever a machine takes at a time.</summary>
    public const int Length = 400;

    private readonly double[] numbers = new double[Length];
    private int drawn;

    /// <summary>The numbers of a stretch, −1 to 1; good until a later stretch is asked for.</summary>
    /// <param name="stretch">Number of the stretch, from 0, never under one that was asked for before.</param>
    public ReadOnlySpan<double> Of(int stretch)
    {
        for (; drawn <= stretch; drawn++)
            stream.Around(numbers);
        return numbers;
    }
}
