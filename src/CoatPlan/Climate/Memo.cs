using System.Collections.Concurrent;

namespace CoatPlan.Climate;

/// <summary>A pure function whose answers are kept: asked twice, computed once.</summary>
internal sealed class Memo<TKey, TValue>
    where TKey : notnull
    where TValue : class
{
    private readonly ConcurrentDictionary<TKey, TValue> known = new();
    private readonly Func<TKey, TValue> answer;

    /// <summary>The function.</summary>
    /// <param name="answer">Depends on nothing but its argument.</param>
    public Memo(Func<TKey, TValue> answer) => this.answer = answer;

    /// <summary>The function's answer.</summary>
    public TValue this[TKey key] => known.GetOrAdd(key, answer);
}
