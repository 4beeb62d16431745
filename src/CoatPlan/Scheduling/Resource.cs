namespace CoatPlan.Scheduling;

/// <summary>Something of which only so much can be in use at one time: people, spray spots, places on a rack.</summary>
/// <param name="Name">A name unique in the network; it is given back in reasons.</param>
/// <param name="Capacity">How many units there are, 0 or more.</param>
public sealed record Resource(string Name, int Capacity);
