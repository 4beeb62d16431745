namespace CoatPlan.Scheduling;

/// <summary>A function of a minute with its latest answers kept, as many as have a place: for questions that come in thousands around the same minutes.</summary>
internal sealed class Recent(Func<int, int> function)
{
    private const int Places = 256;

    private readonly int[] minutes = Unasked();

    private readonly int[] answers = new int[Places];

    public int At(int minute)
    {
        var place = minute & (Places - 1);
        if (minutes[place] != minute)
        {
            answers[place] = function(minute);
            minutes[place] = minute;
        }

        return answers[place];
    }

    private static int[] Unasked()
    {
        var minutes = new int[Places];
        Array.Fill(minutes, int.MinValue);
        return minutes;
    }
}
