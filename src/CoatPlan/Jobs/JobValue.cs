namespace CoatPlan.Jobs;

/// <summary>A value to be written into a job file: a text, a list or a map; there are no other kinds.</summary>
public abstract record JobValue
{
    private protected JobValue()
    {
    }

    /// <summary>A single value, as a person would write it: <c>8 ft2</c>, <c>true</c>, <c>Inner fender</c>.</summary>
    /// <param name="text">The text, without quotes.</param>
    public static JobValue Of(string text) => new TextValue(text);

    /// <summary>A list of single values.</summary>
    /// <param name="items">The texts, without quotes.</param>
    public static JobValue ListOf(params ReadOnlySpan<string> items) => new ListValue([.. items.ToArray().Select(Of)]);

    /// <summary>A map of single values, in order.</summary>
    /// <param name="entries">Keys and texts, without quotes.</param>
    public static JobValue MapOf(params ReadOnlySpan<(string Key, string Text)> entries) =>
        new MapValue([.. entries.ToArray().Select(entry => KeyValuePair.Create(entry.Key, Of(entry.Text)))]);

    /// <summary>Whether two values say the same, whatever the order of keys.</summary>
    /// <param name="a">One value; null: none.</param>
    /// <param name="b">The other value; null: none.</param>
    public static bool Same(JobValue? a, JobValue? b) => (a, b) switch
    {
        (null, null) => true,
        (TextValue x, TextValue y) => x.Text == y.Text,
        (ListValue x, ListValue y) => x.Items.Length == y.Items.Length && x.Items.Zip(y.Items).All(pair => Same(pair.First, pair.Second)),
        (MapValue x, MapValue y) => x.Entries.Length == y.Entries.Length && x.Entries.All(entry => Same(entry.Value, y.Find(entry.Key))),
        _ => false,
    };
}
