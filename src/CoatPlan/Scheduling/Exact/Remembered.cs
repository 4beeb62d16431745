namespace CoatPlan.Scheduling.Exact;

/// <summary>A function of a minute whose answers are kept: callers' functions may be slow, and searches ask the same again and again.</summary>
internal sealed class Remembered(Func<int, int> function)
{
    private readonly Dictionary<int, int> answers = [];

    public int At(int minute)
    {
        if (!answers.TryGetValue(minute, out var answer))
        {
            answer = function(minute);
            answers.Add(minute, answer);
        }

        return answer;
    }
}
