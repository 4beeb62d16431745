namespace CoatPlan.Scheduling;

/// <summary>Capacity kept from the start of one activity until some time after the end of another: a place on the rack from first coat to dry.</summary>
/// <param name="Resource">The name of a <see cref="Scheduling.Resource"/>.</param>
/// <param name="Amount">Units kept, 0 or more.</param>
/// <param name="FromActivity">The id of the activity at whose start the capacity is taken.</param>
/// <param name="UntilActivity">The id of the activity after whose end it is given back; it may be the same one.</param>
/// <param name="Until">From that end to the minute at which it is given back, never earlier and never decreasing; null means at the end.</param>
public sealed record Hold(string Resource, int Amount, string FromActivity, string UntilActivity, Func<int, int>? Until = null);
