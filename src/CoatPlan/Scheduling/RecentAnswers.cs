using System.Diagnostics.CodeAnalysis;

namespace CoatPlan.Scheduling;

/// <summary>Functions of a minute with their latest answers: one for each function, whoever asks it.</summary>
internal sealed class RecentAnswers
{
    private readonly Dictionary<Func<int, int>, Recent> known = [];

    /// <summary>The function with its answers; null for none.</summary>
    [return: NotNullIfNotNull(nameof(function))]
    public Recent? Of(Func<int, int>? function)
    {
        if (function is null)
        {
            return null;
        }

        if (!known.TryGetValue(function, out var recent))
        {
            known.Add(function, recent = new Recent(function));
        }

        return recent;
    }
}
