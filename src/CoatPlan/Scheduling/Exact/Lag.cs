namespace CoatPlan.Scheduling.Exact;

/// <summary>"The target is at least a never decreasing function of the source", always or under a condition.</summary>
internal sealed class Lag
{
    /// <summary>About how many steps it takes to search the minutes for where a function reaches a value.</summary>
    public const int FunctionSteps = 30;

    private readonly int minutes;
    private readonly Func<int, int>? function;
    private readonly Func<int, int>? inverse;
    private readonly int least;
    private readonly int most;

    private Lag(int source, int target, Bound? condition, int minutes, Func<int, int>? function, Func<int, int>? inverse, int least, int most)
    {
        Source = source;
        Target = target;
        Condition = condition;
        this.minutes = minutes;
        this.function = function;
        this.inverse = inverse;
        this.least = least;
        this.most = most;
    }

    /// <summary>About how many steps it takes to follow up: a search among minutes where a function must be turned round.</summary>
    public int Steps => function is null && inverse is null ? 1 : FunctionSteps;

    public int Source { get; }

    public int Target { get; }

    /// <summary>What must hold for the lag to be asked for; null for always.</summary>
    public Bound? Condition { get; }

    public static Lag Constant(int source, int target, int minutes, Bound? condition = null) =>
        new(source, target, condition, minutes, null, null, 0, 0);

    /// <summary>A lag by a function; its source lies from least to most, outside of which it is as good as infinite.</summary>
    public static Lag Of(int source, int target, Func<int, int> function, int least, int most, Bound? condition = null) =>
        new(source, target, condition, 0, function, null, least, most);

    /// <summary>The lag that says the same as "the source is at most a never decreasing function of the target".</summary>
    public static Lag AtMost(int source, int target, Func<int, int> function, int least, int most, Bound? condition = null) =>
        new(source, target, condition, 0, null, function, least, most);

    /// <summary>The least target for a source.</summary>
    public int At(int source) =>
        function is not null ? function(source)
        : inverse is not null ? FirstReaching(inverse, source)
        : source + minutes;

    /// <summary>The least source for which the target must reach a value.</summary>
    public int SourceFor(int target) =>
        function is not null ? FirstReaching(function, target)
        : inverse is not null ? inverse(target - 1) + 1
        : target - minutes;

    /// <summary>The last source, up to one given, for which the target need not pass a value.</summary>
    public int LastSource(int target, int upTo) => function is not null && function(upTo) <= target ? upTo : SourceFor(target + 1) - 1;

    private int FirstReaching(Func<int, int> growing, int value)
    {
        var low = least;
        var high = most + 1;
        while (low < high)
        {
            var middle = low + ((high - low) / 2);
            if (growing(middle) >= value)
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        return low;
    }
}
