namespace CoatPlan.Scheduling;

/// <summary>Where in a network the activity of an id stands, and the resource of a name.</summary>
internal sealed class NetworkNames
{
    private readonly Dictionary<string, int> activities;
    private readonly Dictionary<string, int> resources;

    /// <summary>The names of a network.</summary>
    /// <exception cref="ArgumentException">One is given twice.</exception>
    public NetworkNames(Network network)
    {
        resources = Places("resource", network.Resources, static resource => resource.Name);
        activities = Places("activity", network.Activities, static activity => activity.Id);
    }

    /// <summary>The place of an activity.</summary>
    /// <exception cref="ArgumentException">None has the id.</exception>
    public int Activity(string id) => Place("activity", activities, id);

    /// <summary>The place of a resource.</summary>
    /// <exception cref="ArgumentException">None has the name.</exception>
    public int Resource(string name) => Place("resource", resources, name);

    private static int Place(string sort, Dictionary<string, int> places, string name) =>
        places.TryGetValue(name, out var place) ? place : throw NetworkChecks.Wrong($"The {sort} {name} is not one of the network's {places.Count}.");

    private static Dictionary<string, int> Places<T>(string sort, ImmutableArray<T> things, Func<T, string> nameOf)
    {
        var places = new Dictionary<string, int>(things.Length, StringComparer.Ordinal);
        foreach (var thing in things)
        {
            if (!places.TryAdd(nameOf(thing), places.Count))
            {
                throw NetworkChecks.Wrong($"Each {sort} must have its own name; {nameOf(thing)} is given twice.");
            }
        }

        return places;
    }
}
