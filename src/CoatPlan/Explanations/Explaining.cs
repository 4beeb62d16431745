using CoatPlan.Problems;

namespace CoatPlan.Explanations;

/// <summary>Explains any figure of a plan.</summary>
public static class Explaining
{
    private const int MostSuggestions = 8;

    /// <summary>Shorter words say too little to be searched for.</summary>
    private const int LeastWord = 3;

    /// <summary>The explanation of a figure.</summary>
    /// <param name="workings">What the plan was worked out from and through.</param>
    /// <param name="what">The figure: its place in the plan's JSON (<c>supplies[black].cans</c>, <c>steps[12].after[0].leastMin</c>) or its plain name
    /// (<c>cans black</c>, <c>finish</c>, <c>air</c>, <c>step 12 leastMin</c>); case, spaces, dots, hyphens and brackets do not matter.</param>
    public static ExplanationReading Of(Workings workings, string what)
    {
        ArgumentNullException.ThrowIfNull(workings);
        ArgumentNullException.ThrowIfNull(what);

        return Index(workings).TryGetValue(Plain(what), out var found)
            ? new ExplanationReading(found.Explain() with { Path = found.Path }, [])
            : new ExplanationReading(null, Suggestions(what, [.. Topics(workings)]));
    }

    /// <summary>Every figure that can be asked for by each of its names, letters and digits alone; of two that share a name the first counts.</summary>
    internal static Dictionary<string, Topic> Index(Workings workings)
    {
        var index = new Dictionary<string, Topic>(StringComparer.Ordinal);
        foreach (var topic in Topics(workings))
        {
            foreach (var name in topic.Names.Add(topic.Path))
                index.TryAdd(Plain(name), topic);
        }

        return index;
    }

    /// <summary>A name as it is looked up: its letters and digits in lower case.</summary>
    internal static string Plain(string name) => string.Concat(name.ToLowerInvariant().Where(char.IsLetterOrDigit));

    /// <summary>Every figure that can be asked for, by its place in the plan's JSON.</summary>
    /// <param name="workings">What the plan was worked out from and through.</param>
    public static ImmutableArray<string> Paths(Workings workings)
    {
        ArgumentNullException.ThrowIfNull(workings);
        return [.. Topics(workings).Select(topic => topic.Path)];
    }

    private static IEnumerable<Topic> Topics(Workings workings)
    {
        var told = new Told(workings.Job, workings.Catalogue);
        return
        [
            .. FinishTopics.Of(workings, told), .. IdleTopics.Of(workings), .. SupplyTopics.Of(workings, told), .. LayerTopics.Of(workings, told), .. SurfaceTopics.Of(workings, told),
            .. AirTopics.Of(workings, told), .. ConsumableTopics.Of(workings), .. QuoteTopics.Of(workings, told), .. StepTopics.Of(workings, told),
        ];
    }

    /// <summary>The nearest plain names: spelt alike, then those that hold the most of the words asked for.</summary>
    private static ImmutableArray<string> Suggestions(string what, Topic[] topics)
    {
        var asked = Plain(what);
        var words = Words(what).Where(word => word.Length >= LeastWord).ToArray();
        var named = topics.Where(topic => !topic.Names.IsEmpty).ToArray();
        var spelt = named.Select(topic => (Name: topic.Names[0], Away: topic.Names.Min(name => Nearest.Distance(asked, Plain(name)))))
            .Where(pair => pair.Away <= Math.Max(1, asked.Length / 4)).OrderBy(pair => pair.Away).Select(pair => pair.Name);
        var holding = named.Select(topic => (Name: topic.Names[0], Held: Words($"{topic.Names[0]} {topic.Path}").Intersect(words).Count()))
            .Where(pair => pair.Held > 0).OrderByDescending(pair => pair.Held).ThenBy(pair => pair.Name.Length).Select(pair => pair.Name);
        string[] usual = ["finish", "cans", "air", "quote", "step 1 start"];
        ImmutableArray<string> near = [.. spelt.Concat(holding).Distinct().Take(MostSuggestions)];
        return near.IsEmpty ? [.. usual.Where(name => named.Any(topic => topic.Names.Contains(name)))] : near;
    }

    private static string[] Words(string name) => name.ToLowerInvariant().Split([' ', '.', '[', ']', ',', '-'], StringSplitOptions.RemoveEmptyEntries);
}
