using System.Diagnostics.CodeAnalysis;

namespace CoatPlan.Scheduling;

/// <summary>A start rule whose answers are kept.</summary>
internal sealed class RememberedStarts
{
    private const int None = int.MaxValue - 1;

    private readonly Remembered remembered;

    public RememberedStarts(Func<int, int?> nextStart)
    {
        remembered = new Remembered(t => nextStart(t) ?? None);
    }

    /// <summary>A rule with its answers kept, its own where they are kept already; null for none.</summary>
    [return: NotNullIfNotNull(nameof(nextStart))]
    public static RememberedStarts? Of(Func<int, int?>? nextStart) => nextStart is null ? null : nextStart.Target as RememberedStarts ?? new RememberedStarts(nextStart);

    /// <summary>The first permitted start at or after a minute; null when there is none.</summary>
    public int? From(int minute) => remembered.At(minute) is var start && start == None ? null : start;
}
